package changeover.web.office;

import changeover.contracts.catalogue.Cadence;
import changeover.contracts.catalogue.Interval;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.catalogue.OwnIntervals;
import changeover.contracts.catalogue.Task;
import changeover.contracts.customers.AllEquipment;
import changeover.contracts.customers.Equipment;
import changeover.contracts.words.Refusal;
import changeover.scheduling.households.AcceptedChance;
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
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The business's own intervals over the catalogue's, for every machine or for one; and the tasks and kinds it added. */
@Path("/{slug}/shop/intervals")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class IntervalPages {

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance intervals(Frame frame, OwnRowsView view, int chance, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    OwnIntervals intervals;

    @Inject
    OwnCatalogue catalogue;

    @Inject
    AllEquipment equipment;

    @Inject
    OwnRowsViews views;

    @Inject
    AcceptedChance chance;

    @GET
    @Transactional
    public TemplateInstance list() {
        return page(Said.blank());
    }

    @POST
    public Response keep(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    OwnCatalogue.Own own = catalogue.read();
                    String task = typed.oneOf(
                            "task",
                            own.catalogue().tasks().stream().map(Task::code).collect(Collectors.toUnmodifiableSet()));
                    UUID machine = machine(typed);
                    Cadence cadence = cadence(typed, own);
                    String basis = typed.text("basis", 200);
                    String source = typed.line("source", 500);
                    typed.understood();
                    intervals.keep(new Interval(task, machine, cadence, basis, source));
                    return SaidOnce.at("/" + slug + "/shop/intervals", "kept");
                },
                refusals -> page(Said.again(typed, refusals, frames.locale())));
    }

    /** How seldom a filter may run dirty: it counts from the next time a home's rhythm is reckoned. */
    @POST
    @Path("chance")
    public Response accept(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    int percent = typed.whole("percent", AcceptedChance.LEAST, AcceptedChance.MOST);
                    typed.understood();
                    chance.accept(percent);
                    return SaidOnce.at("/" + slug + "/shop/intervals", "kept");
                },
                refusals -> page(Said.again(typed, refusals, frames.locale())));
    }

    /** Back to what outranked before. */
    @POST
    @Path("{task}/ending")
    public Response end(
            @PathParam("slug") String slug, @PathParam("task") String task, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    UUID machine = typed.idOrNone("machine");
                    typed.understood();
                    if (!intervals.forget(task, machine)) {
                        throw new NotFoundException();
                    }
                    return SaidOnce.at("/" + slug + "/shop/intervals", "kept");
                },
                refusals -> page(Said.again(typed, refusals, frames.locale())));
    }

    private @Nullable UUID machine(Typed typed) {
        String serial = typed.line("serial", 100);
        if (serial == null) {
            return null;
        }
        List<Equipment> found = equipment.ofSerial(serial);
        if (found.size() != 1) {
            String code = found.isEmpty() ? "interval.no-such-serial" : "interval.serial-twice";
            typed.refuse(Refusal.of(code, Map.of("serial", serial)).at("serial"));
            return null;
        }
        return found.getFirst().id();
    }

    private static Cadence cadence(Typed typed, OwnCatalogue.Own own) {
        return switch (typed.oneOf("often", Set.of("every-months", "times-a-year", "each-season"))) {
            case "every-months" -> Cadence.EveryMonths.exactly(typed.whole("number", 1, 120));
            case "times-a-year" -> new Cadence.TimesAYear(typed.whole("number", 1, 52));
            default ->
                Cadence.EachSeason.of(typed.oneOf(
                        "season",
                        own.seasons().climate().seasons().stream()
                                .map(one -> one.code())
                                .collect(Collectors.toUnmodifiableSet())));
        };
    }

    private TemplateInstance page(Said form) {
        Frame frame = frames.of(Tab.SHOP);
        return Pages.intervals(frame, views.of(frame), chance.percent(), form);
    }
}
