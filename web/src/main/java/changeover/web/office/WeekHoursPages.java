package changeover.web.office;

import changeover.contracts.tenants.Today;
import changeover.scheduling.hours.HoursWorked;
import changeover.scheduling.hours.WeekHours;
import changeover.web.session.CsvAnswer;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Tab;
import changeover.web.session.Typed;
import changeover.web.session.WeekInWords;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Everybody's hours of a week, as their visits say and as they signed them; a table to take along. */
@Path("/{slug}/shop/hours")
@RolesAllowed({"owner", "office"})
public class WeekHoursPages {

    private static final int A_WEEK = 7;

    public record View(String monday, String title, String before, String after, List<WeekInWords.Week> weeks) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance weekhours(Frame frame, View view);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    HoursWorked hours;

    @Inject
    Today today;

    @GET
    @Produces(MediaType.TEXT_HTML)
    @Transactional
    public TemplateInstance week(@QueryParam("week") @Nullable String said) {
        Frame frame = frames.of(Tab.SHOP);
        LocalDate monday = WeekHours.mondayOf(day(said));
        return Pages.weekhours(
                frame,
                new View(
                        monday.toString(),
                        frame.inWords(monday),
                        monday.minusDays(A_WEEK).toString(),
                        monday.plusDays(A_WEEK).toString(),
                        hours.week(monday).stream()
                                .map(one -> WeekInWords.of(one, frame))
                                .toList()));
    }

    @GET
    @Path("week.csv")
    @Transactional
    public Response table(@QueryParam("week") @Nullable String said) {
        LocalDate monday = WeekHours.mondayOf(day(said));
        return CsvAnswer.of(hours.csv(monday), "hours-" + monday);
    }

    private LocalDate day(@Nullable String said) {
        try {
            return said == null || said.isBlank() ? today.day() : Typed.readDay(said.strip());
        } catch (DateTimeException notADay) {
            return today.day();
        }
    }
}
