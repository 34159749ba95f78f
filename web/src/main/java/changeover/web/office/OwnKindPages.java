package changeover.web.office;

import changeover.contracts.catalogue.Kind;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.catalogue.OwnKinds;
import changeover.contracts.catalogue.OwnRow;
import changeover.contracts.catalogue.OwnTasks;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.FilledOn;
import changeover.web.session.Desk;
import changeover.web.session.FormRows;
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
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The business's own kinds of equipment: added, changed, withdrawn so that no new machine is of it, brought back. */
@Path("/{slug}/shop/kinds")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed("owner")
public class OwnKindPages {

    /** @param withdrawn since which day, in words; empty while it is offered */
    public record Row(UUID id, String words, String code, String withdrawn) {}

    /** The kind whose form is open; no id for a new one. */
    public record Open(@Nullable UUID id, String code, String words, int version, String withdrawn) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance owncatalogue(Frame frame, List<Row> kinds, List<Row> tasks);

        static native TemplateInstance ownkind(
                Frame frame,
                Open open,
                Said form,
                OwnCatalogueView view,
                List<FormRows.Row> fits,
                List<FormRows.Row> plate);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    OwnKinds kinds;

    @Inject
    OwnTasks tasks;

    @Inject
    OwnCatalogue catalogue;

    @Inject
    Today today;

    @GET
    @Transactional
    @RolesAllowed({"owner", "office"})
    public TemplateInstance list() {
        Frame frame = frames.of(Tab.SHOP);
        return Pages.owncatalogue(
                frame,
                kinds.all().stream()
                        .map(one -> new Row(
                                one.id(),
                                one.body().wording().in(frame.locale()),
                                one.body().code(),
                                since(one, frame)))
                        .toList(),
                tasks.all().stream()
                        .map(one -> new Row(
                                one.id(),
                                one.body().wording().in(frame.locale()),
                                one.body().code(),
                                since(one, frame)))
                        .toList());
    }

    @GET
    @Path("new")
    @Transactional
    public TemplateInstance blank() {
        return page(null, Said.blank());
    }

    @POST
    @Path("new")
    public Response add(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        var form = new OwnKindForm(typed);
        return desk.answer(
                () -> {
                    UUID id = kinds.add(form.read(null));
                    return SaidOnce.at("/" + slug + "/shop/kinds/" + id, "kept");
                },
                refusals -> page(null, Said.again(typed, form.placed(refusals), frames.locale())));
    }

    @GET
    @Path("{own}")
    @Transactional
    public TemplateInstance read(@PathParam("own") UUID id) {
        OwnRow<Kind> row = known(id);
        return page(row, OwnKindForm.filled(row.body()));
    }

    @POST
    @Path("{own}")
    public Response rewrite(
            @PathParam("slug") String slug, @PathParam("own") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        var form = new OwnKindForm(typed);
        int version = typed.whole("version", 0, Integer.MAX_VALUE);
        return desk.answer(
                () -> {
                    Kind kind = form.read(known(id).body().code());
                    kinds.rewrite(id, kind, new FilledOn(version));
                    return SaidOnce.at("/" + slug + "/shop/kinds/" + id, "kept");
                },
                refusals -> page(known(id), Said.again(typed, form.placed(refusals), frames.locale())));
    }

    @POST
    @Path("{own}/withdrawal")
    public Response withdraw(@PathParam("slug") String slug, @PathParam("own") UUID id) {
        return standing(slug, id, true);
    }

    @POST
    @Path("{own}/return")
    public Response bringBack(@PathParam("slug") String slug, @PathParam("own") UUID id) {
        return standing(slug, id, false);
    }

    private Response standing(String slug, UUID id, boolean withdrawn) {
        return desk.answer(
                () -> {
                    if (!kinds.withdraw(id, withdrawn ? today.day() : null)) {
                        throw new NotFoundException();
                    }
                    return SaidOnce.at("/" + slug + "/shop/kinds", "kept");
                },
                _ -> page(known(id), OwnKindForm.filled(known(id).body())));
    }

    private OwnRow<Kind> known(UUID id) {
        return kinds.get(id).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance page(@Nullable OwnRow<Kind> row, Said form) {
        Frame frame = frames.of(Tab.SHOP);
        Open open = row == null
                ? new Open(null, "", "", 0, "")
                : new Open(
                        row.id(),
                        row.body().code(),
                        row.body().wording().in(frame.locale()),
                        row.version(),
                        since(row, frame));
        return Pages.ownkind(
                frame,
                open,
                form,
                OwnCatalogueView.of(catalogue.read(), List.of(), frame.locale()),
                FormRows.shown(form, "fits", OwnKindForm.MOST_FACTS),
                FormRows.shown(form, "plate", OwnKindForm.MOST_FACTS));
    }

    static String since(OwnRow<?> row, Frame frame) {
        return row.withdrawnOn() == null ? "" : frame.inWords(row.withdrawnOn());
    }
}
