package changeover.web.api;

import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Today;
import changeover.scheduling.hours.HoursWorked;
import changeover.scheduling.hours.WeekHours;
import changeover.web.session.CsvAnswer;
import changeover.web.session.Once;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The hours of a week; a technician reads, corrects and signs their own alone. */
@Path("/api/v1/{slug}")
@RolesAllowed({"owner", "office", "technician"})
public class HoursApi {

    /**
     * A day.
     *
     * @param byVisits minutes as the visits say
     * @param minutes that count: the correction's, where there is one
     * @param stretches of work, long gaps between them
     */
    public record DayDocument(
            LocalDate day,
            int visits,
            int onSite,
            @Nullable LocalTime from,
            @Nullable LocalTime until,
            int byVisits,
            int minutes,
            @Nullable String why,
            List<WeekHours.Stretch> stretches) {}

    public record WeekDocument(
            UUID person, String name, LocalDate monday, int minutes, boolean signed, List<DayDocument> days) {}

    @Inject
    HoursWorked hours;

    @Inject
    CurrentTenant current;

    @Inject
    SecurityIdentity identity;

    @Inject
    Today today;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    /** Everybody's week that holds a day, today's when none is named; a technician's own alone. */
    @GET
    @Path("hours")
    @Transactional
    public List<WeekDocument> week(@Nullable @QueryParam("week") String said) {
        LocalDate day = said == null ? today.day() : AskedInQuery.day("week", said);
        return (identity.hasRole("technician") ? List.of(hours.of(current.person(), day)) : hours.week(day))
                .stream().map(HoursApi::document).toList();
    }

    @GET
    @Path("hours.csv")
    @Produces("text/csv")
    @RolesAllowed({"owner", "office"})
    @Transactional
    public Response table(@Nullable @QueryParam("week") String said) {
        LocalDate monday = WeekHours.mondayOf(said == null ? today.day() : AskedInQuery.day("week", said));
        return CsvAnswer.of(hours.csv(monday), "hours-" + monday);
    }

    /** One's own day was otherwise: {@code day, minutes, why}. */
    @POST
    @Path("hours/corrections")
    public Response correct(@HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "hours correction " + current.person() + body, () -> {
            Asked asked = Asked.of(body, json);
            LocalDate day = asked.day("day");
            int minutes = asked.whole("minutes", 0, 1440);
            String why = asked.text("why", 300);
            asked.nothingElse().understood();
            hours.correct(current.person(), day, minutes, why);
            return Once.Answer.done(document(hours.of(current.person(), day)));
        });
    }

    /** One signs the {@code minutes} of one's own week that holds the day {@code week}. */
    @POST
    @Path("hours/signatures")
    public Response sign(@HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "hours signature " + current.person() + body, () -> {
            Asked asked = Asked.of(body, json);
            LocalDate week = asked.day("week");
            int minutes = asked.whole("minutes", 0, Integer.MAX_VALUE);
            asked.nothingElse().understood();
            hours.sign(current.person(), week, minutes);
            return Once.Answer.done(document(hours.of(current.person(), week)));
        });
    }

    private static WeekDocument document(WeekHours week) {
        return new WeekDocument(
                week.person(),
                week.name(),
                week.monday(),
                week.minutes(),
                week.isSigned(),
                week.days().stream().map(HoursApi::day).toList());
    }

    private static DayDocument day(WeekHours.Day one) {
        WeekHours.Correction corrected = one.correction();
        return new DayDocument(
                one.day(),
                one.visits(),
                one.onSite(),
                one.from(),
                one.until(),
                one.byVisits(),
                one.minutes(),
                corrected == null ? null : corrected.why(),
                one.stretches());
    }
}
