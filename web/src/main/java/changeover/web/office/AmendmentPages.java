package changeover.web.office;

import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refused;
import changeover.scheduling.closeout.Amendments;
import changeover.scheduling.closeout.Closure;
import changeover.scheduling.closeout.Closures;
import changeover.scheduling.closeout.StopLines;
import changeover.scheduling.stock.Stock;
import changeover.scheduling.stock.StockPlace;
import changeover.scheduling.stock.StockPlaces;
import changeover.scheduling.visits.VisitLists;
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
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A closed visit is corrected in the office, with a reason. */
@Path("/{slug}/visits/{id}/amendment")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class AmendmentPages {

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance amendment(Frame frame, AmendmentViews.View view, String made, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    VisitLists visits;

    @Inject
    StopLines stops;

    @Inject
    OwnCatalogue catalogue;

    @Inject
    AmendmentViews views;

    @Inject
    Stock stock;

    @Inject
    StockPlaces places;

    @Inject
    Closures closures;

    @Inject
    Businesses businesses;

    @Inject
    Amendments amendments;

    @Inject
    CurrentTenant current;

    @Inject
    Today today;

    @GET
    @Transactional
    public TemplateInstance write(@PathParam("id") UUID id) {
        VisitLists.Row row = found(id);
        Map<String, String> known = form(row, lines(row)).known();
        known.put("language", frames.locale().getLanguage());
        return page(row, UUID.randomUUID().toString(), Said.filled(known));
    }

    @POST
    public Response amend(
            @PathParam("slug") String slug, @PathParam("id") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    VisitLists.Row row = found(id);
                    UUID made = typed.id("made");
                    String why = typed.text("why", 2000);
                    CorrectionTold told = form(row, lines(row)).read(typed, made, today.now());
                    typed.understood();
                    amend(made, id, why, told);
                    return SaidOnce.at("/" + slug + "/visits/" + id, "kept");
                },
                refusals -> page(
                        found(id),
                        String.valueOf(fields.getFirst("made")),
                        Said.again(typed, refusals, frames.locale())));
    }

    private void amend(UUID made, UUID visit, String why, CorrectionTold told) {
        try {
            amendments.amend(made, visit, why, told.operations(), current.person());
        } catch (Refused refused) {
            throw told.atFields(refused);
        }
    }

    /** A closed visit; one that is open is not corrected but closed. */
    private VisitLists.Row found(UUID id) {
        return visits.one(id).filter(row -> "closed".equals(row.how())).orElseThrow(NotFoundException::new);
    }

    private StopLines.Lines lines(VisitLists.Row row) {
        return stops.of(
                row.id(), Objects.requireNonNullElse(row.technicianId(), current.person()), catalogue.catalogue());
    }

    private AmendmentForm form(VisitLists.Row row, StopLines.Lines lines) {
        Closure closure = closures.of(row.id()).orElseThrow(NotFoundException::new);
        return new AmendmentForm(
                lines,
                new CorrectedTimes(
                        lines.said(),
                        closure.arrivedAt().orElse(null),
                        closure.leftAt().orElse(null),
                        closure.day(),
                        businesses.current().zone()),
                new CorrectedParts(lines.said(), this::cameFrom));
    }

    private @Nullable UUID cameFrom(UUID operation) {
        return stock.placeOf(operation)
                .flatMap(places::find)
                .map(StockPlace::id)
                .orElse(null);
    }

    private TemplateInstance page(VisitLists.Row row, String made, Said form) {
        Frame frame = frames.of(Tab.SEASON);
        return Pages.amendment(frame, views.of(row, lines(row), frame.locale()), made, form);
    }
}
