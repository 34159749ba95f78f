package changeover.web.office;

import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.Kind;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.tenants.Today;
import changeover.scheduling.returns.ReturnCounts;
import changeover.scheduling.returns.ReturnVisit;
import changeover.scheduling.returns.ReturnVisits;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Said;
import changeover.web.session.Tab;
import changeover.web.session.Typed;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The free returns of a period for the owner: by cause first, then by part and kind of machine, then by name. */
@Path("/{slug}/shop/returns")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed("owner")
public class ReturnCountPages {

    private static final int A_YEAR = 1;

    /** A group of the page with its heading. */
    public record Group(String by, List<ReturnCounts.Line> lines) {}

    public record View(String first, String last, int returns, int visits, int minutes, List<Group> groups) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance returncounts(Frame frame, View view, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    ReturnVisits returns;

    @Inject
    OwnCatalogue catalogue;

    @Inject
    Today today;

    @GET
    @Transactional
    public Response counts(@Context UriInfo asked) {
        var typed = new Typed(asked.getQueryParameters());
        var day = today.day();
        var from = typed.line("from", 10) == null ? day.minusYears(A_YEAR).plusDays(1) : typed.day("from");
        var last = typed.line("until", 10) == null ? day : typed.day("until");
        boolean well = typed.refusals().isEmpty() && !last.isBefore(from);
        Window days = well
                ? Window.ofDays(from, last)
                : Window.ofDays(day.minusYears(A_YEAR).plusDays(1), day);
        Map<String, String> filled =
                Map.of("from", days.from().toString(), "until", days.last().toString());
        if (typed.refusals().isEmpty()) {
            return Response.ok(page(days, Said.filled(filled))).build();
        }
        return desk.refuse(typed.refusals(), refusals -> page(days, Said.again(typed, refusals, frames.locale())));
    }

    private TemplateInstance page(Window days, Said form) {
        Frame frame = frames.of(Tab.SHOP);
        Locale locale = frame.locale();
        Catalogue trade = catalogue.catalogue();
        ReturnCounts counts = ReturnCounts.of(
                returns.kept(days),
                one -> one.cause().wording().in(locale),
                one -> one.part() == null ? null : one.part().in(locale),
                one -> kind(one, trade, locale));
        return Pages.returncounts(
                frame,
                new View(
                        frame.inWords(days.from()),
                        frame.inWords(days.last()),
                        counts.returns(),
                        returns.visitsKept(days),
                        counts.minutes(),
                        List.of(
                                new Group("cause", counts.causes()),
                                new Group("part", counts.parts()),
                                new Group("kind", counts.kinds()),
                                new Group("technician", counts.technicians()))),
                form);
    }

    private static @org.jspecify.annotations.Nullable String kind(ReturnVisit one, Catalogue trade, Locale locale) {
        String code = one.kind();
        return code == null
                ? null
                : trade.findKind(code)
                        .map(Kind::wording)
                        .map(wording -> wording.in(locale))
                        .orElse(code);
    }
}
