package changeover.web.api;

import changeover.billing.ledger.PeriodEnd;
import changeover.billing.periods.Periods;
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

/** The days that are closed for the accounts; only the owner opens them again, with a reason. */
@Path("/api/v1/{slug}/periods")
@RolesAllowed({"owner", "office"})
public class PeriodsApi {

    /**
     * A closing.
     *
     * @param until the last day that it closed
     * @param closedOn the day on which somebody did
     * @param why it was opened again; null while it stands
     */
    public record CloseDocument(
            UUID id,
            LocalDate until,
            LocalDate closedOn,
            @Nullable String why,
            @Nullable LocalDate reopenedOn) {}

    /**
     * @param closedUntil the last closed day; null when none is
     * @param closings the newest first
     */
    public record PeriodsDocument(@Nullable LocalDate closedUntil, List<CloseDocument> closings) {}

    @Inject
    Periods periods;

    @Inject
    PeriodEnd ends;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    @GET
    @Transactional
    public PeriodsDocument all() {
        return new PeriodsDocument(
                periods.closedUntil().orElse(null),
                periods.all().stream().map(PeriodsApi::document).toList());
    }

    /** Closes all days up to and with {@code until}, and writes down what was earned by then. */
    @POST
    public Response close(@PathParam("slug") String slug, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "periods " + body, () -> {
            Asked asked = Asked.of(body, json);
            LocalDate until = asked.day("until");
            asked.nothingElse().understood();
            UUID made = ends.close(until);
            return Once.Answer.made("/api/v1/" + slug + "/periods", document(known(made)));
        });
    }

    /** Opens again what a closing closed: {@code why}. */
    @POST
    @Path("{id}/reopening")
    @RolesAllowed("owner")
    public Response reopen(@PathParam("id") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "reopening " + id + body, () -> {
            var _ = known(id);
            Asked asked = Asked.of(body, json);
            String why = asked.text("why", 300);
            asked.nothingElse().understood();
            periods.reopen(id, why);
            return Once.Answer.done(document(known(id)));
        });
    }

    private Periods.Close known(UUID id) {
        return periods.all().stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow(NotFoundException::new);
    }

    private static CloseDocument document(Periods.Close one) {
        return new CloseDocument(one.id(), one.until(), one.on(), one.why(), one.reopenedOn());
    }
}
