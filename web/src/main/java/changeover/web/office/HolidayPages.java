package changeover.web.office;

import changeover.contracts.calendar.Holiday;
import changeover.contracts.calendar.HolidayChoice;
import changeover.contracts.calendar.Holidays;
import changeover.contracts.calendar.Window;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.words.Refusal;
import changeover.scheduling.dayplan.ChosenHolidays;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Said;
import changeover.web.session.SaidOnce;
import changeover.web.session.Tab;
import changeover.web.session.Typed;
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
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** On which holidays of its place the business is closed; the others are worked like any day. */
@Path("/{slug}/shop/holidays")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class HolidayPages {

    public record Offered(String code, String words) {}

    @CheckedTemplate(basePath = "office")
    static class Templates {
        static native TemplateInstance holidays(Frame frame, List<Offered> view, String seen, Said form);

        private Templates() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Businesses businesses;

    @Inject
    ChosenHolidays chosen;

    @GET
    @Transactional
    public TemplateInstance read() {
        Frame frame = frames.of(Tab.SHOP);
        return page(frame, new Said(Map.of("kept", kept(frame.today())), Map.of(), List.of()));
    }

    @POST
    public Response choose(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    LocalDate today = frames.of(Tab.SHOP).today();
                    String seen = typed.line("seen", 2000);
                    if (seen != null && !seen.equals(seen(today))) {
                        throw Refusal.of("changed-meanwhile").thrown();
                    }
                    chosen.choose(coming(today), Set.copyOf(typed.each("kept")));
                    return SaidOnce.at("/" + slug + "/shop/holidays", "kept");
                },
                refusals -> page(frames.of(Tab.SHOP), Said.again(typed, refusals, frames.locale())));
    }

    private TemplateInstance page(Frame frame, Said form) {
        return Templates.holidays(
                frame,
                coming(frame.today()).stream()
                        .map(one -> new Offered(one.code(), frame.inWords(one.day()) + ", " + one.name(frame.locale())))
                        .toList(),
                seen(frame.today()),
                form);
    }

    private List<String> kept(LocalDate today) {
        HolidayChoice choice = chosen.choice();
        return coming(today).stream().filter(choice::keeps).map(Holiday::code).toList();
    }

    private String seen(LocalDate today) {
        return String.join(" ", kept(today));
    }

    /** Of the twelve months to come. */
    private List<Holiday> coming(LocalDate today) {
        String place = businesses.current().place();
        return Stream.of(today.getYear(), today.getYear() + 1)
                .flatMap(year -> Holidays.offered(place, year).stream())
                .filter(one -> new Window(today, today.plusYears(1)).contains(one.day()))
                .toList();
    }
}
