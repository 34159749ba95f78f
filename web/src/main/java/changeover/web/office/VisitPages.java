package changeover.web.office;

import changeover.contracts.customers.HomesShut;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Today;
import changeover.scheduling.dayplan.Appointments;
import changeover.scheduling.dayplan.Moving;
import changeover.scheduling.dayplan.SecondHands;
import changeover.scheduling.visits.VisitLists;
import changeover.scheduling.visits.Visits;
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
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** One visit for the office: why it exists, its day, its end. */
@Path("/{slug}/visits/{id}")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class VisitPages {

    public record Technician(UUID person, String name) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance visit(
                Frame frame,
                VisitInWords.View view,
                AskedOfVisit.Asks asks,
                HoursInWords.Hour hour,
                List<EstimateRowsInWords.Line> estimates,
                List<OrderRows.Line> orders,
                List<ReturnsOfVisits.Line> returns,
                List<ClaimRows.Line> claims,
                ReviewRows.@Nullable Line held,
                List<ReadingRows.Line> readings,
                String beyond,
                List<Technician> technicians,
                Said form);

        static native TemplateInstance visitending(Frame frame, VisitInWords.View view, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Today today;

    @Inject
    Desk desk;

    @Inject
    VisitLists lists;

    @Inject
    Visits visits;

    @Inject
    Appointments appointments;

    @Inject
    People people;

    @Inject
    SecondHands seconds;

    @Inject
    HomesShut shut;

    @Inject
    AskedOfVisit asks;

    @Inject
    HoursInWords hours;

    @Inject
    VisitInWords inWords;

    @Inject
    EstimateRowsInWords estimates;

    @Inject
    OrderRows orders;

    @Inject
    ReturnsOfVisits returns;

    @Inject
    ClaimRows claims;

    @Inject
    ReviewRows reviews;

    @Inject
    ReadingRows readings;

    @GET
    @Transactional
    public TemplateInstance visit(@PathParam("id") UUID id) {
        Frame frame = frames.of(Tab.SEASON);
        VisitLists.Row row = found(id);
        LocalDate day =
                row.day() != null ? row.day() : row.first().isBefore(frame.today()) ? frame.today() : row.first();
        return page(
                row,
                frame,
                Said.filled(Map.of(
                        "day",
                        day.toString(),
                        "starts",
                        row.starts() == null ? "08:00" : row.starts().toString(),
                        "technician",
                        row.technicianId() == null ? "" : row.technicianId().toString(),
                        "second",
                        seconds.of(id).map(one -> one.technicianId().toString()).orElse(""))));
    }

    @POST
    @Path("appointment")
    public Response give(
            @PathParam("slug") String slug, @PathParam("id") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    SeenDay.of(found(id)).mustStand(fields);
                    UUID technician = typed.id("technician");
                    var day = typed.day("day");
                    var starts = typed.time("starts");
                    UUID second = typed.idOrNone("second");
                    Moving moving = MovingForm.of(typed);
                    typed.understood();
                    var given = appointments.give(id, new Appointments.Slot(technician, day, starts, null), moving);
                    if (fields.containsKey("second")) {
                        seconds.give(id, second);
                    }
                    return SaidOnce.at("/" + slug + "/visits/" + id, keptHow(id, day, given));
                },
                refusals -> page(found(id), frames.of(Tab.SEASON), Said.again(typed, refusals, frames.locale())));
    }

    @POST
    @Path("appointment/removal")
    public Response takeOff(
            @PathParam("slug") String slug, @PathParam("id") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    SeenDay.of(found(id)).mustStand(fields);
                    Moving moving = MovingForm.of(typed);
                    typed.understood();
                    appointments.takeOff(id, moving);
                    return SaidOnce.at("/" + slug + "/visits/" + id, "kept");
                },
                refusals -> page(found(id), frames.of(Tab.SEASON), Said.again(typed, refusals, frames.locale())));
    }

    @GET
    @Path("ending")
    @Transactional
    public TemplateInstance ending(@PathParam("id") UUID id) {
        Frame frame = frames.of(Tab.SEASON);
        return Pages.visitending(frame, inWords.of(found(id), frame), Said.blank());
    }

    @POST
    @Path("ending")
    public Response end(
            @PathParam("slug") String slug, @PathParam("id") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    found(id);
                    String how = typed.oneOf("how", Set.of("cancelled", "no_access", "not_kept"));
                    String why = typed.text("why", 500);
                    typed.understood();
                    LocalDate now = today.day();
                    switch (how) {
                        case "cancelled" -> visits.cancel(id, now, why);
                        case "no_access" -> visits.noAccess(id, now, why);
                        default -> visits.notKept(id, now, why);
                    }
                    return SaidOnce.at("/" + slug + "/visits/" + id, "kept");
                },
                refusals -> {
                    Frame frame = frames.of(Tab.SEASON);
                    return Pages.visitending(
                            frame, inWords.of(found(id), frame), Said.again(typed, refusals, frame.locale()));
                });
    }

    private String keptHow(UUID visit, LocalDate day, Appointments.Given given) {
        if (shut.on(found(visit).homeId(), day).isPresent()) {
            return "day-kept-shut";
        }
        return given.notes().isEmpty() ? "day-kept" : "day-kept-outside";
    }

    private VisitLists.Row found(UUID id) {
        return lists.one(id).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance page(VisitLists.Row row, Frame frame, Said form) {
        List<Technician> technicians = people.technicians(frame.today()).stream()
                .map(member -> new Technician(member.personId(), member.name()))
                .toList();
        EstimateRowsInWords.OfVisit estimated = estimates.ofVisit(frame, row.id());
        return Pages.visit(
                frame,
                inWords.of(row, frame),
                asks.of(row.id(), frame),
                hours.of(row.id(), frame),
                estimated.lines(),
                orders.ofVisits(frame, List.of(row.id())),
                returns.of(row.id(), frame),
                claims.ofVisit(row.id(), frame),
                reviews.ofVisit(row.id(), frame),
                "closed".equals(row.how()) ? readings.of(row.id(), frame) : List.of(),
                estimated.beyond(),
                technicians,
                form);
    }
}
