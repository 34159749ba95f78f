package changeover.web.office;

import changeover.contracts.agreements.MachinesInAgreements;
import changeover.contracts.catalogue.Cadence;
import changeover.contracts.catalogue.Interval;
import changeover.contracts.catalogue.Kind;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.catalogue.OwnIntervals;
import changeover.contracts.customers.AllEquipment;
import changeover.contracts.customers.Equipment;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.FilledOn;
import changeover.contracts.words.Wording;
import changeover.scheduling.households.FilterSlot;
import changeover.web.session.Desk;
import changeover.web.session.FactFields;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.MachineInWords;
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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** One machine of a home, or common to a building: what is known of it, how often it is served, and its end. */
@Path("/{slug}/{where:homes|buildings}/{place}/machines")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class MachinePages {

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance machine(
                Frame frame,
                MachinePlaces.Place place,
                MachineInWords words,
                NewMachinePages.Choice kind,
                FactFields fields,
                Said form,
                Equipment machine,
                List<HowOften.Line> tasks,
                boolean leftOut,
                String replaced,
                boolean slot);

        static native TemplateInstance machineending(
                Frame frame, MachinePlaces.Place place, Equipment machine, Said form);

        private Pages() {}
    }

    @PathParam("where")
    String where;

    @PathParam("slug")
    String slug;

    @PathParam("place")
    UUID placeId;

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    MachinePlaces places;

    @Inject
    AllEquipment equipment;

    @Inject
    OwnCatalogue catalogue;

    @Inject
    HowOften howOften;

    @Inject
    OwnIntervals intervals;

    @Inject
    MachinesInAgreements agreements;

    @Inject
    ReplacementInWords replaced;

    @Inject
    Today today;

    @GET
    @Path("{machine}")
    @Transactional
    public TemplateInstance machine(@PathParam("machine") UUID id) {
        Equipment machine = known(id);
        return page(machine, Said.filled(MachineForm.filled(machine.facts())));
    }

    @POST
    @Path("{machine}")
    public Response rewrite(@PathParam("machine") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        int version = typed.whole("version", 0, Integer.MAX_VALUE);
        return desk.answer(
                () -> {
                    Equipment.Facts facts = MachineForm.read(kind(known(id).kind()), typed);
                    typed.understood();
                    equipment.rewrite(id, places.ownedHere(facts), new FilledOn(version));
                    return SaidOnce.at(path(id), "kept");
                },
                refusals -> page(known(id), Said.again(typed, refusals, frames.locale())));
    }

    /** The machine came in mid-term: it is promised what was sold, in what is left of the term. */
    @POST
    @Path("{machine}/agreement")
    public Response takeIn(@PathParam("machine") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    UUID home = known(id).homeId().orElseThrow(NotFoundException::new);
                    agreements.takeIn(home, id, today.day());
                    return SaidOnce.at(path(id), "machine-taken-in");
                },
                refusals -> page(known(id), Said.again(typed, refusals, frames.locale())));
    }

    @GET
    @Path("{machine}/ending")
    @Transactional
    public TemplateInstance askAgain(@PathParam("machine") UUID id) {
        return ending(id, Said.filled(Map.of("day", today.day().toString())));
    }

    @POST
    @Path("{machine}/ending")
    public Response end(@PathParam("machine") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        var day = typed.day("day");
        return desk.answer(
                () -> {
                    UUID machine = known(id).id();
                    typed.understood();
                    equipment.takeOut(machine, day);
                    return SaidOnce.at("/" + slug + "/" + place().path(), "machine-out");
                },
                refusals -> ending(id, Said.again(typed, refusals, frames.locale())));
    }

    private TemplateInstance page(Equipment machine, Said form) {
        Frame frame = frames.of(Tab.HOMES);
        OwnCatalogue.Own own = catalogue.read();
        Kind kind = own.catalogue()
                .findKind(machine.kind())
                .orElse(new Kind(machine.kind(), new Wording(machine.kind(), machine.kind()), List.of(), List.of()));
        return Pages.machine(
                frame,
                place(),
                MachineInWords.of(machine, own.catalogue(), frame.locale()),
                new NewMachinePages.Choice(kind.code(), name(kind)),
                FactFields.of(kind, frame.locale()),
                form,
                machine,
                howOften.of(machine, own, frame.locale()),
                machine.homeId()
                        .filter(home -> agreements.leftOut(home, frame.today()).contains(machine.id()))
                        .isPresent(),
                replaced.of(machine, frame),
                place().isHome()
                        && FilterSlot.KIND.equals(machine.kind())
                        && machine.endedOn().isEmpty());
    }

    /** The machine's own label outranks the catalogue, with what it rests on. */
    @POST
    @Path("{machine}/intervals/{task}")
    public Response keepInterval(
            @PathParam("machine") UUID id, @PathParam("task") String task, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        boolean forget = typed.ticked("forget");
        int months = forget ? 1 : typed.whole("months", 1, 120);
        String basis = forget ? "" : typed.text("basis", 200);
        return desk.answer(
                () -> {
                    Equipment machine = known(id);
                    if (catalogue.catalogue().findTask(task).isEmpty()) {
                        throw new NotFoundException();
                    }
                    typed.understood();
                    if (forget) {
                        intervals.forget(task, machine.id());
                    } else {
                        intervals.keep(
                                new Interval(task, machine.id(), Cadence.EveryMonths.exactly(months), basis, null));
                    }
                    return SaidOnce.at(path(id), "kept");
                },
                refusals -> {
                    Equipment machine = known(id);
                    Said again = Said.again(typed, refusals, frames.locale());
                    var values = new LinkedHashMap<>(
                            Said.filled(MachineForm.filled(machine.facts())).values());
                    values.putAll(again.values());
                    values.put("interval", List.of(task));
                    return page(machine, new Said(values, again.errors(), again.top()));
                });
    }

    private TemplateInstance ending(UUID id, Said form) {
        return Pages.machineending(frames.of(Tab.HOMES), place(), known(id), form);
    }

    private MachinePlaces.Place place() {
        return places.of(where, placeId).orElseThrow(NotFoundException::new);
    }

    private Equipment known(UUID id) {
        return places.machine(place(), id).orElseThrow(NotFoundException::new);
    }

    private Kind kind(String code) {
        return catalogue.read().catalogue().findKind(code).orElseThrow(NotFoundException::new);
    }

    private String name(Kind kind) {
        return kind.wording().in(frames.locale());
    }

    private String path(UUID machine) {
        return "/" + slug + "/" + where + "/" + placeId + "/machines/" + machine;
    }
}
