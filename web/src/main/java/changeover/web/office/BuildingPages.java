package changeover.web.office;

import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.customers.AllEquipment;
import changeover.contracts.customers.Building;
import changeover.contracts.customers.Buildings;
import changeover.contracts.customers.Customer;
import changeover.contracts.customers.Customers;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.HomeParts;
import changeover.contracts.customers.Homes;
import changeover.contracts.customers.PartInHome;
import changeover.contracts.tenants.Business;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.FilledOn;
import changeover.web.session.Desk;
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
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** A building: its dwellings with who pays for each, and the machines that serve them in common. */
@Path("/{slug}/buildings")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class BuildingPages {

    /** A dwelling and who pays for it today. */
    public record Dwelling(
            UUID id,
            String line,
            @Nullable UUID payer,
            @Nullable String payerName) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance buildings(Frame frame, List<Building> buildings);

        static native TemplateInstance building(
                Frame frame,
                Building building,
                Building.Facts facts,
                List<Dwelling> dwellings,
                List<MachineInWords> machines);

        static native TemplateInstance buildingform(Frame frame, @Nullable Building building, Said form, int version);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Buildings buildings;

    @Inject
    Homes homes;

    @Inject
    HomeParts parts;

    @Inject
    Customers customers;

    @Inject
    AllEquipment equipment;

    @Inject
    OwnCatalogue catalogue;

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    @GET
    @Transactional
    public TemplateInstance list() {
        return Pages.buildings(frames.of(Tab.HOMES), buildings.all());
    }

    @GET
    @Path("new")
    @Transactional
    public TemplateInstance write() {
        Business business = businesses.current();
        return Pages.buildingform(
                frames.of(Tab.HOMES),
                null,
                Said.filled(Map.of("region", business.region(), "country", business.country())),
                0);
    }

    @POST
    public Response add(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    Building.Facts facts = facts(typed);
                    typed.understood();
                    return SaidOnce.at(
                            "/" + slug + "/buildings/" + buildings.add(facts).id(), "kept");
                },
                refusals -> Pages.buildingform(
                        frames.of(Tab.HOMES), null, Said.again(typed, refusals, frames.locale()), 0));
    }

    @GET
    @Path("{building}")
    @Transactional
    public TemplateInstance building(@PathParam("building") UUID id) {
        Building building = known(id);
        Frame frame = frames.of(Tab.HOMES);
        var trade = catalogue.catalogue();
        return Pages.building(
                frame,
                building,
                building.facts(),
                dwellings(id),
                equipment.ofBuilding(id).stream()
                        .map(machine -> MachineInWords.of(machine, trade, frame.locale()))
                        .toList());
    }

    @GET
    @Path("{building}/edit")
    @Transactional
    public TemplateInstance edit(@PathParam("building") UUID id) {
        Building building = known(id);
        return Pages.buildingform(
                frames.of(Tab.HOMES), building, Said.filled(filled(building.facts())), building.version());
    }

    @POST
    @Path("{building}")
    public Response keep(
            @PathParam("slug") String slug, @PathParam("building") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        int version = typed.whole("version", 0, Integer.MAX_VALUE);
        return desk.answer(
                () -> {
                    known(id);
                    Building.Facts facts = facts(typed);
                    typed.understood();
                    buildings.rewrite(id, facts, new FilledOn(version));
                    return SaidOnce.at("/" + slug + "/buildings/" + id, "kept");
                },
                refusals -> Pages.buildingform(
                        frames.of(Tab.HOMES),
                        known(id),
                        Said.again(typed, refusals, frames.locale()),
                        known(id).version()));
    }

    private List<Dwelling> dwellings(UUID building) {
        List<Home> all = homes.ofBuilding(building);
        if (all.isEmpty()) {
            return List.of();
        }
        Map<UUID, UUID> payers = parts.customers(all.stream().map(Home::id).toList(), PartInHome.PAYS, today.day());
        Map<UUID, Customer> known = payers.isEmpty()
                ? Map.of()
                : customers.all(payers.values().stream().distinct().toList()).stream()
                        .collect(Collectors.toMap(Customer::id, Function.identity()));
        return all.stream()
                .map(home -> {
                    Customer payer = known.get(payers.get(home.id()));
                    return new Dwelling(
                            home.id(),
                            home.line(),
                            payer == null ? null : payer.id(),
                            payer == null ? null : payer.name());
                })
                .toList();
    }

    private Building known(UUID id) {
        return buildings.get(id).orElseThrow(NotFoundException::new);
    }

    private static Building.Facts facts(Typed typed) {
        return new Building.Facts(
                typed.text("name", 120),
                typed.text("street", 200),
                typed.text("city", 100),
                typed.text("region", 10),
                typed.line("postal", 20),
                typed.text("country", 2),
                typed.line("notes", 4000));
    }

    private static Map<String, String> filled(Building.Facts facts) {
        var fields = new HashMap<String, String>();
        fields.put("name", facts.name());
        fields.put("street", facts.street());
        fields.put("city", facts.city());
        fields.put("region", facts.region());
        fields.put("postal", facts.postal() == null ? "" : facts.postal());
        fields.put("country", facts.country());
        fields.put("notes", facts.notes() == null ? "" : facts.notes());
        return fields;
    }
}
