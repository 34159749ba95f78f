package changeover.web.office;

import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Today;
import changeover.scheduling.instruments.Instrument;
import changeover.scheduling.instruments.Instruments;
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
import java.util.UUID;
import java.util.function.Consumer;

/** What readings are taken with: serial numbers, calibrations and who has each. */
@Path("/{slug}/shop/instruments")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class InstrumentPages {

    /** @param state never, over, soon, or empty */
    public record Line(
            UUID id, String name, String serial, String last, String state, String holder, String holderId) {}

    public record Person(UUID id, String name) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance instruments(
                Frame frame, List<Line> lines, List<Person> crew, Said form, Said change);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Instruments instruments;

    @Inject
    People people;

    @Inject
    Today today;

    @GET
    @Transactional
    public TemplateInstance list() {
        return page(Said.blank(), Said.blank());
    }

    @POST
    public Response add(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    String name = typed.text("name", 80);
                    String serial = typed.text("serial", 60);
                    LocalDate until = typed.dayOrNone("until");
                    typed.understood();
                    instruments.add(name, serial, until, today.day());
                    return SaidOnce.at("/" + slug + "/shop/instruments", "kept");
                },
                refusals -> page(Said.again(typed, refusals, frames.locale()), Said.blank()));
    }

    @POST
    @Path("{instrument}/calibration")
    public Response calibrated(
            @PathParam("slug") String slug,
            @PathParam("instrument") UUID instrument,
            MultivaluedMap<String, String> fields) {
        return change(slug, instrument, fields, typed -> {
            LocalDate day = typed.day("day");
            LocalDate until = typed.day("until");
            typed.understood();
            instruments.calibrated(instrument, day, until);
        });
    }

    @POST
    @Path("{instrument}/holder")
    public Response give(
            @PathParam("slug") String slug,
            @PathParam("instrument") UUID instrument,
            MultivaluedMap<String, String> fields) {
        return change(slug, instrument, fields, typed -> {
            UUID person = typed.idOrNone("person");
            typed.understood();
            instruments.give(instrument, person, today.day());
        });
    }

    @POST
    @Path("{instrument}/end")
    public Response end(
            @PathParam("slug") String slug,
            @PathParam("instrument") UUID instrument,
            MultivaluedMap<String, String> fields) {
        return change(slug, instrument, fields, _ -> instruments.end(instrument, today.day()));
    }

    private Response change(String slug, UUID instrument, MultivaluedMap<String, String> fields, Consumer<Typed> deed) {
        fields.putSingle("of", instrument.toString());
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = instruments.find(instrument).orElseThrow(NotFoundException::new);
                    deed.accept(typed);
                    return SaidOnce.at("/" + slug + "/shop/instruments", "kept");
                },
                refusals -> page(Said.blank(), Said.again(typed, refusals, frames.locale())));
    }

    private TemplateInstance page(Said form, Said change) {
        Frame frame = frames.of(Tab.SHOP);
        return Pages.instruments(
                frame,
                instruments.all().stream().map(one -> line(one, frame)).toList(),
                people.technicians(frame.today()).stream()
                        .map(one -> new Person(one.personId(), one.name()))
                        .toList(),
                form,
                change);
    }

    static Line line(Instrument one, Frame frame) {
        LocalDate until = one.calibratedUntil();
        LocalDate day = frame.today();
        String state = until == null ? "never" : one.isOver(day) ? "over" : one.isSpokenOf(day) ? "soon" : "";
        String holder = one.holderName();
        return new Line(
                one.id(),
                one.name(),
                one.serial(),
                until == null ? "" : frame.brief(until),
                state,
                holder == null ? "" : holder,
                one.holder() == null ? "" : one.holder().toString());
    }
}
