package changeover.web.api;

import changeover.contracts.tenants.Today;
import changeover.scheduling.instruments.Instrument;
import changeover.scheduling.instruments.Instruments;
import changeover.web.session.Once;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The instruments in use; a reading names its own by id, in a closure as in an operation. */
@Path("/api/v1/{slug}/instruments")
@RolesAllowed({"owner", "office"})
public class InstrumentsApi {

    @Inject
    Instruments instruments;

    @Inject
    Today today;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    /** Technicians read them too, to name one at a reading. */
    @GET
    @RolesAllowed({"owner", "office", "technician"})
    @Transactional
    public List<Instrument> all() {
        return instruments.all();
    }

    /** An instrument: {@code name, serial}, optionally {@code until}, the last day of its calibration. */
    @POST
    public Response add(@PathParam("slug") String slug, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "instruments " + body, () -> {
            Asked asked = Asked.of(body, json);
            String name = asked.text("name", 80);
            String serial = asked.text("serial", 60);
            LocalDate until = asked.dayOrNone("until");
            asked.nothingElse().understood();
            UUID id = instruments.add(name, serial, until, today.day());
            return Once.Answer.made("/api/v1/" + slug + "/instruments/" + id, known(id));
        });
    }

    @GET
    @Path("{instrument}")
    @Transactional
    public Instrument one(@PathParam("instrument") UUID instrument) {
        return known(instrument);
    }

    /** It was calibrated on a {@code day}, {@code until} another. */
    @POST
    @Path("{instrument}/calibration")
    public Response calibrated(
            @PathParam("instrument") UUID instrument, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "calibration " + instrument + body, () -> {
            var _ = known(instrument);
            Asked asked = Asked.of(body, json);
            LocalDate day = asked.day("day");
            LocalDate until = asked.day("until");
            asked.nothingElse().understood();
            instruments.calibrated(instrument, day, until);
            return Once.Answer.done(known(instrument));
        });
    }

    /** Somebody has it from today on: {@code person}; the shop where none is named. */
    @POST
    @Path("{instrument}/holder")
    public Response give(
            @PathParam("instrument") UUID instrument, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "holder " + instrument + body, () -> {
            var _ = known(instrument);
            Asked asked = Asked.of(body, json);
            @Nullable UUID person = asked.idOrNone("person");
            asked.nothingElse().understood();
            instruments.give(instrument, person, today.day());
            return Once.Answer.done(known(instrument));
        });
    }

    /** It is in use no longer. */
    @POST
    @Path("{instrument}/end")
    public Response end(@PathParam("instrument") UUID instrument, @HeaderParam("Operation-Id") String operation) {
        return once.answer(operation, "instrument end " + instrument, () -> {
            Instrument gone = known(instrument);
            instruments.end(instrument, today.day());
            return Once.Answer.done(gone);
        });
    }

    private Instrument known(UUID instrument) {
        return instruments.find(instrument).orElseThrow(NotFoundException::new);
    }
}
