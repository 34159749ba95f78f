package changeover.web.field;

import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import changeover.scheduling.closeout.CloseOut;
import changeover.scheduling.closeout.Operation;
import changeover.scheduling.closeout.StopLines;
import changeover.scheduling.orders.PartOrders;
import changeover.scheduling.visits.VisitLists;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.OrderTyped;
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
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.math.BigDecimal;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

/** The parts of a visit: what was used, whatever the checklist holds, and what must be ordered. */
@Path("/{slug}/field/visits/{id}/parts")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office", "technician"})
public class FieldPartPages {

    private static final int USUAL_DAYS = 3;
    private static final int LINE = 200;
    private static final int SERIAL = 80;

    @CheckedTemplate(basePath = "field")
    static class Pages {
        static native TemplateInstance parts(Frame frame, FieldParts.View view, Said form, String made);

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
    FieldParts views;

    @Inject
    OrderTyped typing;

    @Inject
    PartOrders orders;

    @Inject
    CloseOut closeOut;

    @Inject
    CurrentTenant current;

    @Inject
    Today today;

    @Inject
    Clock clock;

    @GET
    @Transactional
    public TemplateInstance parts(@PathParam("id") UUID id) {
        return page(visits.found(id), Said.filled(known()), UUID.randomUUID().toString());
    }

    private Map<String, String> known() {
        return Map.of(
                "used",
                "1",
                "quantity",
                "1",
                "expected",
                today.day().plusDays(USUAL_DAYS).toString());
    }

    /** A part stayed at the home, or was not used after all. */
    @POST
    public Response use(
            @PathParam("slug") String slug, @PathParam("id") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    StopLines.Lines lines = checklists.lines(visits.found(id));
                    var telling = new Telling(typed.id("made"), clock.instant());
                    takeBack(typed, lines, telling);
                    String part = typed.line("taken", LINE);
                    if (part != null) {
                        BigDecimal quantity = typed.number("used", new BigDecimal("0.0001"), new BigDecimal("9999"));
                        String why = typed.oneOf("why", Set.of("plan", "repair", "extra", "warranty"));
                        UUID machine = typed.idOrNone("machine");
                        UUID place = typed.idOrNone("place");
                        telling.add(
                                new Operation.PartTaken(
                                        part,
                                        quantity,
                                        place,
                                        machine,
                                        why,
                                        typed.line("short", LINE),
                                        typed.line("oldSerial", SERIAL),
                                        typed.line("newSerial", SERIAL)),
                                FieldPartPages::field);
                    }
                    if (part == null
                            && (typed.line("oldSerial", SERIAL) != null || typed.line("newSerial", SERIAL) != null)) {
                        typed.refuse(Refusal.of("field.serial-of-which").at("taken"));
                    }
                    typed.understood();
                    telling.tell(closeOut, id, current.person());
                    return SaidOnce.at("/" + slug + "/field/visits/" + id + "/parts", "kept");
                },
                refusals -> again(id, typed, refusals));
    }

    private static void takeBack(Typed typed, StopLines.Lines lines, Telling telling) {
        List<String> back = typed.each("back");
        new SheetSoFar(lines.said())
                .parts().stream()
                        .filter(said -> back.contains(said.id().toString()))
                        .forEach(said -> telling.add(new Operation.TakeBack(said.id()), _ -> "taken"));
    }

    private static String field(String field) {
        return switch (field) {
            case "quantity" -> "used";
            case "equipment" -> "machine";
            case "place", "short", "why", "oldSerial", "newSerial" -> field;
            default -> "taken";
        };
    }

    /** The visit waits for a part. */
    @POST
    @Path("orders")
    public Response order(
            @PathParam("slug") String slug, @PathParam("id") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = visits.found(id);
                    UUID made = typed.id("made");
                    var _ = orders.order(made, typing.read(id, typed));
                    return SaidOnce.at("/" + slug + "/field/visits/" + id + "/parts", "part-ordered");
                },
                refusals -> again(id, typed, refusals));
    }

    private TemplateInstance again(UUID id, Typed typed, List<Refusal> refusals) {
        Said said = Said.again(typed, refusals, frames.locale());
        var values = new java.util.HashMap<String, List<String>>();
        known().forEach((field, value) -> values.put(field, List.of(value)));
        values.putAll(said.values());
        return page(
                visits.found(id),
                new Said(values, said.errors(), said.top()),
                Telling.form(typed).toString());
    }

    private TemplateInstance page(VisitLists.Row row, Said form, String made) {
        Frame frame = frames.of(null);
        return Pages.parts(frame, views.of(row, checklists.lines(row), frame), form, made);
    }
}
