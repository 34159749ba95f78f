package changeover.web.office;

import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.catalogue.OwnRow;
import changeover.contracts.catalogue.OwnTasks;
import changeover.contracts.catalogue.Task;
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

/** The business's own tasks: added, changed, withdrawn so that no new promise names it, brought back. */
@Path("/{slug}/shop/tasks")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed("owner")
public class OwnTaskPages {

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance owntask(
                Frame frame,
                OwnKindPages.Open open,
                Said form,
                OwnCatalogueView view,
                List<FormRows.Row> readings,
                List<FormRows.Row> parts);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    OwnTasks tasks;

    @Inject
    OwnCatalogue catalogue;

    @Inject
    Today today;

    @GET
    @Path("new")
    @Transactional
    public TemplateInstance blank() {
        return page(null, OwnTaskForm.blank());
    }

    @POST
    @Path("new")
    public Response add(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        var form = new OwnTaskForm(typed);
        return desk.answer(
                () -> {
                    UUID id = tasks.add(form.read(null));
                    return SaidOnce.at("/" + slug + "/shop/tasks/" + id, "kept");
                },
                refusals -> page(null, Said.again(typed, form.placed(refusals), frames.locale())));
    }

    @GET
    @Path("{own}")
    @Transactional
    public TemplateInstance read(@PathParam("own") UUID id) {
        OwnRow<Task> row = known(id);
        return page(row, OwnTaskForm.filled(row.body(), frames.locale()));
    }

    @POST
    @Path("{own}")
    public Response rewrite(
            @PathParam("slug") String slug, @PathParam("own") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        var form = new OwnTaskForm(typed);
        int version = typed.whole("version", 0, Integer.MAX_VALUE);
        return desk.answer(
                () -> {
                    Task task = form.read(known(id).body());
                    tasks.rewrite(id, task, new FilledOn(version));
                    return SaidOnce.at("/" + slug + "/shop/tasks/" + id, "kept");
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
                    if (!tasks.withdraw(id, withdrawn ? today.day() : null)) {
                        throw new NotFoundException();
                    }
                    return SaidOnce.at("/" + slug + "/shop/kinds", "kept");
                },
                _ -> page(known(id), OwnTaskForm.filled(known(id).body(), frames.locale())));
    }

    private OwnRow<Task> known(UUID id) {
        return tasks.get(id).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance page(@Nullable OwnRow<Task> row, Said form) {
        Frame frame = frames.of(Tab.SHOP);
        var open = row == null
                ? new OwnKindPages.Open(null, "", "", 0, "")
                : new OwnKindPages.Open(
                        row.id(),
                        row.body().code(),
                        row.body().wording().in(frame.locale()),
                        row.version(),
                        OwnKindPages.since(row, frame));
        return Pages.owntask(
                frame,
                open,
                form,
                OwnCatalogueView.of(
                        catalogue.read(), row == null ? List.of() : row.body().kinds(), frame.locale()),
                FormRows.shown(form, "reading", OwnTaskForm.MOST_READINGS),
                FormRows.shown(form, "part", OwnTaskForm.MOST_PARTS));
    }
}
