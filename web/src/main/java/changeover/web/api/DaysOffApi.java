package changeover.web.api;

import changeover.contracts.calendar.Window;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import changeover.scheduling.dayplan.Rosters;
import changeover.scheduling.dayplan.change.DaysAway;
import changeover.scheduling.dayplan.change.Leaving;
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

/** The days off of somebody from today on, with the visits that are booked on them all the same. */
@Path("/api/v1/{slug}/people/{id}/days-off")
@RolesAllowed({"owner", "office"})
public class DaysOffApi {

    private static final int YEARS = 2;

    /** @param everybody whether the whole business is closed that day */
    public record Off(UUID id, LocalDate day, String why, boolean everybody) {}

    public record DaysOffDocument(UUID person, List<Off> days, List<Leaving.Left> booked) {}

    @Inject
    People people;

    @Inject
    Rosters rosters;

    @Inject
    DaysAway away;

    @Inject
    Today today;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    @GET
    @Transactional
    public DaysOffDocument look(@PathParam("id") UUID id) {
        known(id);
        return document(id);
    }

    /** Takes days off: {@code from}, optionally {@code last}, {@code why}; {@code everybody} closes the whole business. */
    @POST
    public Response takeOff(@PathParam("id") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "days off " + id + body, () -> {
            known(id);
            Asked asked = Asked.of(body, json);
            LocalDate first = asked.day("from");
            LocalDate last = asked.value("last") == null ? first : asked.day("last");
            if (last.isBefore(first)) {
                asked.refuse(Refusal.of("visit.last-before-first").at("last"));
            }
            String why = asked.text("why", 200);
            boolean everybody = asked.yes("everybody");
            asked.nothingElse().understood();
            away.takeOff(everybody ? null : id, Window.ofDays(first, last), why);
            return Once.Answer.done(document(id));
        });
    }

    /** The day is worked after all. */
    @POST
    @Path("{off}/removal")
    public Response work(
            @PathParam("id") UUID id, @PathParam("off") UUID off, @HeaderParam("Operation-Id") String operation) {
        return once.answer(operation, "day off removal " + id + off, () -> {
            known(id);
            if (!away.workAfterAll(id, off, null)) {
                throw new NotFoundException();
            }
            return Once.Answer.done(document(id));
        });
    }

    private DaysOffDocument document(UUID person) {
        LocalDate day = today.day();
        return new DaysOffDocument(
                person,
                rosters.daysOff(new Window(day, day.plusYears(YEARS))).stream()
                        .filter(off -> off.personId().map(person::equals).orElse(true))
                        .map(off -> new Off(
                                off.id(), off.day(), off.why(), off.personId().isEmpty()))
                        .toList(),
                away.booked(person, day));
    }

    private void known(UUID person) {
        if (people.of(person).isEmpty()) {
            throw new NotFoundException();
        }
    }
}
