package changeover.web.office;

import changeover.contracts.calendar.Window;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import changeover.scheduling.stock.Loading;
import changeover.scheduling.stock.Stock;
import changeover.scheduling.stock.StockPlace;
import changeover.scheduling.stock.Supplies;
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
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What goes from the shelf into each van for some days, written down as loaded in one press, and what must be bought. */
@Path("/{slug}/parts/loading")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class LoadingPages {

    private static final int MOST_DAYS = 14;

    /** @param day the first, as an address says it */
    public record View(
            String day,
            int days,
            List<Integer> choices,
            String first,
            String last,
            List<LoadsInWords.Van> vans,
            List<LoadsInWords.From> buy) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance loading(Frame frame, View view, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    VanLoads vans;

    @Inject
    Stock stock;

    @Inject
    Supplies supplies;

    @Inject
    Today today;

    @GET
    @Transactional
    public TemplateInstance read(
            @QueryParam("from") @Nullable String from, @QueryParam("days") @DefaultValue("1") String days) {
        Frame frame = frames.of(Tab.PARTS);
        return page(frame, days(from, days, frame.today()), Said.blank());
    }

    @POST
    @Path("{van}")
    public Response load(
            @PathParam("slug") String slug, @PathParam("van") UUID place, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    Window days = days(typed);
                    UUID operation = typed.id("operation");
                    String seen = typed.text("seen", 20_000);
                    typed.understood();
                    VanLoads.Seen now = vans.of(days, today.day());
                    if (!now.places().containsKey(place)) {
                        throw new NotFoundException();
                    }
                    List<Loading.Line> lines = now.loading().vans().stream()
                            .filter(van -> van.place().equals(place))
                            .flatMap(van -> van.toLoad().stream())
                            .toList();
                    StockPlace shelf = now.shelf().orElseThrow(NotFoundException::new);
                    if (stock.placeOf(operation).isEmpty()) {
                        if (!LoadsInWords.seen(lines).equals(seen)) {
                            throw Refusal.of("changed-meanwhile").thrown();
                        }
                        stock.move(operation, shelf.id(), place, LoadsInWords.amounts(lines), null);
                    }
                    return SaidOnce.at("/" + slug + "/parts/loading", "kept") + "&from=" + days.from() + "&days="
                            + length(days);
                },
                refusals -> page(frames.of(Tab.PARTS), days(typed), Said.again(typed, refusals, frames.locale())));
    }

    private TemplateInstance page(Frame frame, Window days, Said form) {
        VanLoads.Seen seen = vans.of(days, frame.today());
        Locale locale = frame.locale();
        List<LoadsInWords.Van> shown = seen.loading().vans().stream()
                .map(van -> LoadsInWords.van(van, seen, locale))
                .toList();
        return Pages.loading(
                frame,
                new View(
                        days.from().toString(),
                        length(days),
                        List.of(1, 2, 5, 7, MOST_DAYS),
                        frame.inWords(days.from()),
                        frame.inWords(days.last()),
                        shown,
                        LoadsInWords.buy(seen, supplies.suppliers(), locale)),
                form);
    }

    private static int length(Window days) {
        return (int) (days.until().toEpochDay() - days.from().toEpochDay());
    }

    private Window days(Typed typed) {
        return days(typed.line("from", 10), typed.line("days", 2), today.day());
    }

    /** Whatever an address says that is no day is today, and no number of days is one. */
    private static Window days(@Nullable String from, @Nullable String days, LocalDate today) {
        LocalDate first = today;
        int many = 1;
        try {
            first = from == null || from.isEmpty() ? today : LocalDate.parse(from);
            many = days == null || !days.matches("\\d{1,2}") ? 1 : Integer.parseInt(days);
        } catch (DateTimeException notADay) {
            first = today;
        }
        boolean near = !first.isBefore(today.minusYears(1)) && first.isBefore(today.plusYears(5));
        return Window.ofDays(
                near ? first : today, (near ? first : today).plusDays(Math.clamp(many, 1, MOST_DAYS) - 1L));
    }
}
