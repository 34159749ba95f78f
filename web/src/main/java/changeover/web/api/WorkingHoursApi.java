package changeover.web.api;

import changeover.contracts.tenants.People;
import changeover.contracts.words.Refusal;
import changeover.scheduling.dayplan.Roster;
import changeover.scheduling.dayplan.Rosters;
import changeover.web.session.Once;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Response;
import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** When somebody works: one run of hours a weekday. */
@Path("/api/v1/{slug}/people/{id}/working-hours")
@RolesAllowed({"owner", "office"})
public class WorkingHoursApi {

    /** @param weekday monday to sunday */
    public record Hours(String weekday, LocalTime starts, LocalTime ends) {}

    /** @param usual whether the usual hours hold, since none were written */
    public record HoursDocument(UUID person, boolean usual, List<Hours> hours) {}

    @Inject
    People people;

    @Inject
    Rosters rosters;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    @GET
    @Transactional
    public Response look(@PathParam("id") UUID id) {
        known(id);
        return Edition.of(document(id), edition(id));
    }

    /** Writes them anew on the edition that If-Match names: {@code hours}, each with {@code weekday, starts, ends}. */
    @PUT
    public Response write(
            @PathParam("id") UUID id,
            @HeaderParam("If-Match") String ifMatch,
            @HeaderParam("Operation-Id") String operation,
            String body) {
        return once.answer(operation, "working hours " + id + " " + ifMatch + body, () -> {
            known(id);
            var seen = Edition.filledOn(ifMatch);
            Asked asked = Asked.of(body, json);
            List<Roster.Hours> hours =
                    asked.each("hours").stream().map(WorkingHoursApi::hours).toList();
            asked.nothingElse().understood();
            if (hours.isEmpty()) {
                throw Refusal.of("roster.no-hours").at("hours").thrown();
            }
            seen.mustBe(edition(id));
            rosters.write(id, hours);
            return Once.Answer.done(document(id));
        });
    }

    private static Roster.Hours hours(Asked one) {
        var weekdays = Stream.of(DayOfWeek.values()).map(WorkingHoursApi::code).collect(Collectors.toUnmodifiableSet());
        String weekday = one.oneOf("weekday", weekdays);
        LocalTime starts = one.time("starts");
        LocalTime ends = one.time("ends");
        return new Roster.Hours(
                weekdays.contains(weekday) ? DayOfWeek.valueOf(weekday.toUpperCase(Locale.ROOT)) : DayOfWeek.MONDAY,
                starts,
                ends);
    }

    private static String code(DayOfWeek day) {
        return day.name().toLowerCase(Locale.ROOT);
    }

    /** A number that changes with the hours. */
    private int edition(UUID person) {
        return Math.floorMod(rosters.hoursOf(person).toString().hashCode(), 1_000_000_000);
    }

    private HoursDocument document(UUID person) {
        return new HoursDocument(
                person,
                !rosters.hasOwn(person),
                rosters.hoursOf(person).stream()
                        .map(one -> new Hours(code(one.weekday()), one.starts(), one.ends()))
                        .toList());
    }

    private void known(UUID person) {
        if (people.of(person).isEmpty()) {
            throw new NotFoundException();
        }
    }
}
