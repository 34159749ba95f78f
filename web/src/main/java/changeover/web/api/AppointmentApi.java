package changeover.web.api;

import changeover.scheduling.dayplan.Appointments;
import changeover.scheduling.dayplan.Moving;
import changeover.scheduling.dayplan.SecondHands;
import changeover.scheduling.dayplan.change.HoursTold;
import changeover.scheduling.visits.Visits;
import changeover.web.session.Once;
import changeover.web.session.OwnVisits;
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
import java.time.LocalTime;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A visit's hour: given or moved, told to the customer (from then on it is confirmed, and moves with {@code askedBy} and
 * {@code why} only), made by two, taken off. A technician reads their own, also where they only go along.
 */
@Path("/api/v1/{slug}/visits/{id}/appointment")
@RolesAllowed({"owner", "office"})
public class AppointmentApi {

    /** What was given, and what whoever gave it should know. */
    public record AppointmentDocument(
            UUID visit, UUID technician, LocalDate day, LocalTime starts, LocalTime ends, List<String> notes) {}

    @Inject
    OwnVisits own;

    @Inject
    Visits visits;

    @Inject
    Appointments appointments;

    @Inject
    SecondHands seconds;

    @Inject
    HoursTold told;

    @Inject
    HourDocuments documents;

    @Inject
    Tongue tongue;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    @GET
    @Transactional
    @RolesAllowed({"owner", "office", "technician"})
    public HourDocument hour(@PathParam("id") UUID id) {
        return documents.of(own.found(id).id());
    }

    /**
     * Gives a day or moves it: {@code technician, day, starts}, optionally {@code ends}; with {@code askedBy} (customer or us)
     * and {@code why} where the customer was told the hour that it has.
     */
    @POST
    public Response give(@PathParam("id") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "appointment " + id + body, () -> {
            known(id);
            Asked asked = Asked.of(body, json);
            UUID technician = asked.id("technician");
            LocalDate day = asked.day("day");
            LocalTime starts = asked.time("starts");
            LocalTime ends = asked.value("ends") == null ? null : asked.time("ends");
            @Nullable Moving moving = HourDocuments.moving(asked);
            asked.nothingElse().understood();
            var given = appointments.give(id, new Appointments.Slot(technician, day, starts, ends), moving);
            var appointment = given.appointment();
            return Once.Answer.done(new AppointmentDocument(
                    id,
                    appointment.technicianId(),
                    appointment.day(),
                    appointment.starts(),
                    appointment.ends(),
                    given.notes().stream().map(note -> note.in(tongue.locale())).toList()));
        });
    }

    /** Takes the day off; with {@code askedBy} and {@code why} where the customer was told the hour. */
    @POST
    @Path("removal")
    public Response takeOff(@PathParam("id") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "appointment removal " + id + body, () -> {
            known(id);
            Asked asked = Asked.of(body, json);
            @Nullable Moving moving = HourDocuments.moving(asked);
            asked.nothingElse().understood();
            appointments.takeOff(id, moving);
            return Once.Answer.done(documents.of(id));
        });
    }

    /** The customer was told the hour that it has. */
    @POST
    @Path("told")
    public Response tell(@PathParam("id") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "appointment told " + id + body, () -> {
            known(id);
            Asked.of(body, json).nothingElse().understood();
            told.tell(id);
            return Once.Answer.done(documents.of(id));
        });
    }

    /** Who goes along: {@code technician}, null for nobody any more. */
    @POST
    @Path("second")
    public Response second(@PathParam("id") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "appointment second " + id + body, () -> {
            known(id);
            Asked asked = Asked.of(body, json);
            @Nullable UUID technician = asked.idOrNone("technician");
            asked.nothingElse().understood();
            seconds.give(id, technician);
            return Once.Answer.done(documents.of(id));
        });
    }

    private void known(UUID id) {
        if (visits.find(id).isEmpty()) {
            throw new NotFoundException();
        }
    }
}
