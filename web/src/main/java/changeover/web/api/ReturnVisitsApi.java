package changeover.web.api;

import changeover.contracts.calendar.Window;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import changeover.scheduling.returns.NewReturnVisit;
import changeover.scheduling.returns.ReturnCause;
import changeover.scheduling.returns.ReturnVisit;
import changeover.scheduling.returns.ReturnVisits;
import changeover.scheduling.visits.VisitLists;
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
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Free returns: made for a closed visit, and for the owner those that were kept. */
@Path("/api/v1/{slug}")
@RolesAllowed({"owner", "office"})
public class ReturnVisitsApi {

    private static final int DAY_IN_MINUTES = 1440;

    /** @param cause workmanship, part, diagnosis, unfinished, setting or other */
    public record ReturnVisitDocument(
            UUID visit,
            UUID answers,
            UUID home,
            @Nullable LocalDate answeredOn,
            String cause,
            @Nullable String part,
            @Nullable String kind,
            String words,
            @Nullable LocalDate day,
            int minutes) {}

    @Inject
    ReturnVisits returns;

    @Inject
    VisitLists visits;

    @Inject
    Today today;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    /** Those that were kept between {@code from} and {@code until}, the last year where nothing is said; the first visit's technician is on the page alone. */
    @GET
    @Path("return-visits")
    @RolesAllowed("owner")
    @Transactional
    public List<ReturnVisitDocument> kept(
            @Nullable @QueryParam("from") String from, @Nullable @QueryParam("until") String until) {
        LocalDate last = until == null ? today.day() : AskedInQuery.day("until", until);
        LocalDate first = from == null ? last.minusYears(1).plusDays(1) : AskedInQuery.day("from", from);
        if (last.isBefore(first)) {
            throw Refusal.of("visit.last-before-first").at("until").thrown();
        }
        return returns.kept(Window.ofDays(first, last)).stream()
                .map(ReturnVisitsApi::document)
                .toList();
    }

    /** We go back without charge: {@code cause, words}, optionally {@code part, equipment, minutes} (60) and {@code last} (in a week). */
    @POST
    @Path("visits/{id}/returns")
    public Response make(
            @PathParam("slug") String slug,
            @PathParam("id") UUID id,
            @HeaderParam("Operation-Id") String operation,
            String body) {
        return once.answer(operation, "return visits " + id + body, () -> {
            var _ = visits.one(id).orElseThrow(NotFoundException::new);
            Asked asked = Asked.of(body, json);
            String cause = asked.oneOf("cause", ReturnCause.codes());
            String part = asked.line("part", 60);
            UUID machine = asked.idOrNone("equipment");
            String words = asked.text("words", 1000);
            int minutes = asked.wholeOr("minutes", 5, DAY_IN_MINUTES, 60);
            LocalDate last = asked.dayOrNone("last");
            asked.nothingElse().understood();
            UUID made = returns.make(new NewReturnVisit(
                    id,
                    ReturnCause.of(cause),
                    part,
                    machine,
                    words,
                    minutes,
                    last == null ? today.day().plusDays(7) : last));
            return Once.Answer.made(
                    "/api/v1/" + slug + "/visits/" + made,
                    returns.ofVisit(made).stream()
                            .filter(one -> one.visitId().equals(made))
                            .map(ReturnVisitsApi::document)
                            .findFirst()
                            .orElseThrow());
        });
    }

    private static ReturnVisitDocument document(ReturnVisit one) {
        return new ReturnVisitDocument(
                one.visitId(),
                one.answersId(),
                one.homeId(),
                one.answeredOn(),
                one.cause().code(),
                one.part() == null ? null : one.part().en(),
                one.kind(),
                one.words(),
                one.day(),
                one.minutes());
    }
}
