package changeover.web.api;

import changeover.contracts.tenants.People;
import changeover.scheduling.dayplan.Minutes;
import changeover.scheduling.dayplan.change.Absences;
import changeover.scheduling.dayplan.change.SharedOut;
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
import java.time.LocalTime;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Somebody is not there on a day: whoever was told an hour keeps it with another technician, nobody else is moved, and what
 * finds no place goes back to the season. Every customer concerned stands in {@code rings}.
 */
@Path("/api/v1/{slug}/days/{day}/absences/{person}")
@RolesAllowed({"owner", "office"})
public class AbsencesApi {

    /**
     * What becomes of one visit.
     *
     * @param along whether they only went along: whoever leads keeps it
     * @param technician who makes it on the same day, or goes along instead; null where it goes back to the season, or wants
     *     somebody else to go along
     * @param second who goes along too, where two must go and nobody did yet; else null
     * @param starts when it begins then; null where it goes back
     */
    public record Share(
            UUID visit,
            LocalTime was,
            boolean told,
            boolean along,
            @Nullable UUID technician,
            @Nullable UUID second,
            @Nullable LocalTime starts) {}

    public record AbsenceDocument(LocalDate day, UUID person, List<Share> visits) {}

    @Inject
    Absences absences;

    @Inject
    People people;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    /** What would become of the day; nothing moves. */
    @GET
    @Transactional
    public AbsenceDocument look(@PathParam("day") String said, @PathParam("person") UUID person) {
        LocalDate day = DaysApi.day(said);
        known(person);
        return document(day, person, absences.shares(day, person));
    }

    /** Shares the day out and takes it off their hours: {@code why}. */
    @POST
    public Response share(
            @PathParam("day") String said,
            @PathParam("person") UUID person,
            @HeaderParam("Operation-Id") String operation,
            String body) {
        LocalDate day = DaysApi.day(said);
        return once.answer(operation, "absence " + day + person + body, () -> {
            known(person);
            Asked asked = Asked.of(body, json);
            String why = asked.text("why", 200);
            asked.nothingElse().understood();
            return Once.Answer.done(document(day, person, absences.share(day, person, why)));
        });
    }

    private static AbsenceDocument document(LocalDate day, UUID person, List<SharedOut.Share> shares) {
        return new AbsenceDocument(
                day, person, shares.stream().map(AbsencesApi::share).toList());
    }

    private static Share share(SharedOut.Share one) {
        return new Share(
                one.visit(),
                Minutes.time(one.was()),
                one.told(),
                one.along(),
                one.technician(),
                one.second(),
                one.technician() == null ? null : Minutes.time(one.starts()));
    }

    private void known(UUID person) {
        if (people.of(person).isEmpty()) {
            throw new NotFoundException();
        }
    }
}
