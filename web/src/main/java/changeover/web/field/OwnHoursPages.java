package changeover.web.field;

import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Today;
import changeover.scheduling.hours.HoursWorked;
import changeover.scheduling.hours.WeekHours;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Said;
import changeover.web.session.SaidOnce;
import changeover.web.session.Typed;
import changeover.web.session.WeekInWords;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** One's own hours of a week: read from visits, corrected with a reason, signed. Nobody's else are shown or written here. */
@Path("/{slug}/field/hours")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office", "technician"})
public class OwnHoursPages {

    private static final BigDecimal SIXTY = BigDecimal.valueOf(60);
    private static final BigDecimal A_DAY = BigDecimal.valueOf(24);
    private static final int A_WEEK = 7;

    public record View(String monday, String title, String before, String after, WeekInWords.Week week) {}

    @CheckedTemplate(basePath = "field")
    static class Pages {
        static native TemplateInstance ownhours(Frame frame, View view, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    HoursWorked hours;

    @Inject
    CurrentTenant current;

    @Inject
    Today today;

    @GET
    @Transactional
    public TemplateInstance week(@QueryParam("week") @Nullable String said) {
        return page(day(said), Said.filled(Map.of("day", today.day().toString())));
    }

    @POST
    @Path("correction")
    public Response correct(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    LocalDate day = typed.day("day");
                    BigDecimal worked = typed.number("hours", BigDecimal.ZERO, A_DAY);
                    String why = typed.text("why", 300);
                    typed.understood();
                    int minutes = worked.multiply(SIXTY)
                            .setScale(0, RoundingMode.HALF_UP)
                            .intValueExact();
                    hours.correct(current.person(), day, minutes, why);
                    return SaidOnce.at("/" + slug + "/field/hours?week=" + day, "kept");
                },
                refusals -> page(day(fields.getFirst("week")), Said.again(typed, refusals, frames.locale())));
    }

    @POST
    @Path("signature")
    public Response sign(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    LocalDate week = typed.day("week");
                    int minutes = typed.whole("minutes", 0, Integer.MAX_VALUE);
                    typed.understood();
                    hours.sign(current.person(), week, minutes);
                    return SaidOnce.at("/" + slug + "/field/hours?week=" + week, "kept");
                },
                refusals -> page(day(fields.getFirst("week")), Said.again(typed, refusals, frames.locale())));
    }

    /** A day that does not read is today. */
    private LocalDate day(@Nullable String said) {
        try {
            return said == null || said.isBlank() ? today.day() : Typed.readDay(said.strip());
        } catch (DateTimeException notADay) {
            return today.day();
        }
    }

    private TemplateInstance page(LocalDate day, Said form) {
        Frame frame = frames.of(null);
        WeekHours week = hours.of(current.person(), day);
        LocalDate monday = week.monday();
        return Pages.ownhours(
                frame,
                new View(
                        monday.toString(),
                        frame.inWords(monday),
                        monday.minusDays(A_WEEK).toString(),
                        monday.plusDays(A_WEEK).toString(),
                        WeekInWords.of(week, frame)),
                form);
    }
}
