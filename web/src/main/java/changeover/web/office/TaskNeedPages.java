package changeover.web.office;

import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.catalogue.Task;
import changeover.contracts.catalogue.Who;
import changeover.scheduling.dayplan.Need;
import changeover.scheduling.dayplan.Needs;
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
import java.util.List;

/** What a task asks in every home: two people, or an hour of the day. */
@Path("/{slug}/shop/needs")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class TaskNeedPages {

    public record Row(String words, String needs, String why) {}

    public record Choice(String code, String words) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance taskneeds(Frame frame, List<Row> rows, List<Choice> tasks, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Needs needs;

    @Inject
    OwnCatalogue trade;

    @GET
    @Transactional
    public TemplateInstance read() {
        return page(Said.blank());
    }

    @POST
    public Response write(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    String task = typed.text("task", 100);
                    Need need = NeedForm.read(typed, false);
                    String why = typed.text("why", 200);
                    typed.understood();
                    needs.write(task, need, why);
                    return SaidOnce.at("/" + slug + "/shop/needs", "kept");
                },
                refusals -> page(Said.again(typed, refusals, frames.locale())));
    }

    private TemplateInstance page(Said form) {
        Frame frame = frames.of(Tab.SHOP);
        Catalogue catalogue = trade.catalogue();
        List<Row> rows = needs.ofTasks().stream()
                .map(need -> new Row(
                        catalogue
                                .findTask(need.taskCode())
                                .map(task -> task.wording().in(frame.locale()))
                                .orElse(""),
                        NeedInWords.of(need.need(), frame.locale()),
                        need.why()))
                .toList();
        List<Choice> tasks = catalogue.tasks().stream()
                .filter(task -> task.who() == Who.TECHNICIAN)
                .map(task -> choice(task, frame))
                .toList();
        return Pages.taskneeds(frame, rows, tasks, form);
    }

    private static Choice choice(Task task, Frame frame) {
        return new Choice(task.code(), task.wording().in(frame.locale()));
    }
}
