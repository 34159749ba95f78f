package changeover.web.field;

import changeover.contracts.catalogue.Kind;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.tenants.CurrentTenant;
import changeover.scheduling.closeout.CloseOut;
import changeover.scheduling.closeout.DaySheet;
import changeover.scheduling.closeout.Operation;
import changeover.scheduling.closeout.StopLines;
import changeover.scheduling.visits.VisitLists;
import changeover.web.session.Desk;
import changeover.web.session.FactFields;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.OwnVisits;
import changeover.web.session.Said;
import changeover.web.session.SaidOnce;
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
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The equipment that a technician finds where nobody had written it down: each machine as its plate says it. */
@Path("/{slug}/field/visits/{id}/machines")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office", "technician"})
public class FoundMachinePages {

    /** A kind to choose from. */
    public record Choice(String code, String words) {}

    /** A machine of the home; its operation where it was written down at this visit. */
    public record Machine(
            String name, String kind, @Nullable UUID operation) {}

    public record View(UUID visit, String home, boolean over, List<Machine> machines, List<Choice> kinds) {}

    @CheckedTemplate(basePath = "field")
    static class Pages {
        static native TemplateInstance machines(Frame frame, View view, Said form, UUID made);

        static native TemplateInstance machineform(
                Frame frame, View view, Choice kind, FactFields fields, Said form, UUID made);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    OwnVisits visits;

    @Inject
    VisitViews checklists;

    @Inject
    OwnCatalogue catalogue;

    @Inject
    CloseOut closeOut;

    @Inject
    CurrentTenant current;

    @Inject
    Clock clock;

    @GET
    @Transactional
    public TemplateInstance machines(@PathParam("id") UUID id, @QueryParam("kind") @Nullable String kind) {
        VisitLists.Row row = visits.found(id);
        return kind == null || kind.isEmpty()
                ? list(row, Said.blank(), UUID.randomUUID())
                : form(row, kind(kind), Said.filled(Map.of("name", name(kind(kind)))), UUID.randomUUID());
    }

    /** The machine stands in the home from now on. */
    @POST
    public Response keep(
            @PathParam("slug") String slug, @PathParam("id") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    visits.found(id);
                    var telling = new Telling(typed.id("made"), clock.instant());
                    var found = new Operation.MachineFound(FoundMachineForm.read(kind(typed), typed));
                    typed.understood();
                    telling.add(found, FactFields::fieldOf);
                    telling.tell(closeOut, id, current.person());
                    return SaidOnce.at("/" + slug + "/field/visits/" + id + "/machines", "machine-kept");
                },
                refusals -> form(
                        visits.found(id),
                        kind(typed),
                        Said.again(typed, refusals, frames.locale()),
                        Telling.form(typed)));
    }

    /** What was written down by mistake goes again. */
    @POST
    @Path("back")
    public Response takeBack(
            @PathParam("slug") String slug, @PathParam("id") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    List<DaySheet.Said> said =
                            checklists.lines(visits.found(id)).said();
                    var telling = new Telling(typed.id("made"), clock.instant());
                    List<String> back = typed.each("back");
                    typed.understood();
                    said.stream()
                            .filter(one -> one.kind().equals("machine")
                                    && back.contains(one.id().toString()))
                            .forEach(one -> telling.add(new Operation.TakeBack(one.id()), _ -> ""));
                    telling.tell(closeOut, id, current.person());
                    return SaidOnce.at("/" + slug + "/field/visits/" + id + "/machines", "kept");
                },
                refusals -> list(visits.found(id), Said.again(typed, refusals, frames.locale()), Telling.form(typed)));
    }

    private TemplateInstance list(VisitLists.Row row, Said form, UUID made) {
        return Pages.machines(frames.of(null), view(row), form, made);
    }

    private TemplateInstance form(VisitLists.Row row, Kind kind, Said form, UUID made) {
        return Pages.machineform(
                frames.of(null),
                view(row),
                new Choice(kind.code(), name(kind)),
                FactFields.of(kind, frames.locale()),
                form,
                made);
    }

    private View view(VisitLists.Row row) {
        StopLines.Lines lines = checklists.lines(row);
        List<UUID> written = lines.said().stream()
                .filter(one -> one.kind().equals("machine"))
                .map(DaySheet.Said::id)
                .toList();
        var known = catalogue.catalogue();
        return new View(
                row.id(),
                row.street() + ", " + row.city(),
                row.how() != null,
                lines.machines().stream()
                        .map(machine -> new Machine(
                                machine.name(),
                                known.findKind(machine.kind()).map(this::name).orElse(machine.kind()),
                                written.contains(machine.id()) ? machine.id() : null))
                        .toList(),
                known.kinds().stream()
                        .map(kind -> new Choice(kind.code(), name(kind)))
                        .toList());
    }

    private Kind kind(Typed typed) {
        return kind(Objects.requireNonNullElse(typed.line("kind", 60), ""));
    }

    private Kind kind(String code) {
        return catalogue.catalogue().findKind(code).orElseThrow(NotFoundException::new);
    }

    private String name(Kind kind) {
        return kind.wording().in(frames.locale());
    }
}
