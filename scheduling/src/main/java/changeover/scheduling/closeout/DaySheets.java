package changeover.scheduling.closeout;

import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.customers.AccessCodes;
import changeover.contracts.customers.Hazards;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.Today;
import changeover.scheduling.closeout.DaySheet.Code;
import changeover.scheduling.closeout.DaySheet.Danger;
import changeover.scheduling.closeout.DaySheet.HomeFacts;
import changeover.scheduling.closeout.DaySheet.VanPart;
import changeover.scheduling.dayplan.DayPlan;
import changeover.scheduling.dayplan.DayPlans;
import changeover.scheduling.dayplan.NeededParts;
import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.Parts;
import changeover.scheduling.stock.Stock;
import changeover.scheduling.stock.StockPlace;
import changeover.scheduling.stock.StockPlaces;
import changeover.scheduling.stock.VanList;
import changeover.scheduling.visits.VisitEnd;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/** Writes a technician's day as one document. */
@ApplicationScoped
public class DaySheets {

    @Inject
    DayPlans plans;

    @Inject
    StopLines lines;

    @Inject
    Closures closures;

    @Inject
    Homes homes;

    @Inject
    Hazards hazards;

    @Inject
    AccessCodes codes;

    @Inject
    OwnCatalogue own;

    @Inject
    Parts parts;

    @Inject
    Stock stock;

    @Inject
    StockPlaces places;

    @Inject
    Today today;

    /** The technician's day. Keys and codes stand in it on that day only, and each reading of them is kept. */
    public DaySheet of(UUID technicianId, LocalDate day) {
        return of(technicianId, day, day.equals(today.day()));
    }

    /** The same to be printed: paper lies about, so neither key nor code stands on it. */
    public DaySheet onPaper(UUID technicianId, LocalDate day) {
        return of(technicianId, day, false);
    }

    private DaySheet of(UUID technicianId, LocalDate day, boolean withCodes) {
        DayPlan plan = plans.of(technicianId, day);
        Catalogue catalogue = own.catalogue();
        List<DaySheet.Stop> stops = plan.stops().stream()
                .map(stop -> stop(stop, technicianId, catalogue, withCodes))
                .toList();
        List<KnownPart> carried = parts.all();
        Map<String, BigDecimal> inVan = held(places.van(technicianId));
        NeededParts needed = NeededParts.of(plan.load(), carried);
        return new DaySheet(
                technicianId,
                plan.technician(),
                day,
                stops,
                List.copyOf(catalogue.cautions()),
                List.copyOf(catalogue.sentences()),
                stops.stream().anyMatch(stop -> stop.home().toBeRead()) ? List.copyOf(catalogue.kinds()) : List.of(),
                carried.stream()
                        .map(part -> new VanPart(
                                part,
                                Optional.ofNullable(part.kind())
                                        .flatMap(catalogue::findPart)
                                        .orElse(null),
                                inVan.getOrDefault(part.code(), BigDecimal.ZERO)))
                        .toList(),
                VanList.of(needed.quantities(), inVan, held(places.shelf())),
                needed.notCarried());
    }

    private Map<String, BigDecimal> held(Optional<StockPlace> place) {
        return place.map(found -> stock.onHand(found.id())).orElse(Map.of());
    }

    private DaySheet.Stop stop(DayPlan.Stop stop, UUID technician, Catalogue catalogue, boolean withCodes) {
        Optional<Home> home = homes.get(stop.homeId());
        StopLines.Lines written = lines.of(stop.visitId(), technician, catalogue);
        return new DaySheet.Stop(
                stop.visitId(),
                stop.homeId(),
                stop.kind().code(),
                stop.starts(),
                stop.ends(),
                stop.minutes(),
                Optional.ofNullable(stop.ended()).map(VisitEnd::code).orElse(null),
                closures.of(stop.visitId()).map(Closure::version).orElse(0),
                stop.note(),
                new HomeFacts(
                        stop.home(),
                        stop.opens(),
                        stop.phone(),
                        home.map(found -> found.facts().gettingIn()).orElse(null),
                        home.map(Home::toBeRead).orElse(false),
                        stop.latitude(),
                        stop.longitude()),
                withCodes && stop.ended() == null ? codes(stop.homeId()) : List.of(),
                hazards.of(stop.homeId()).stream()
                        .map(hazard -> new Danger(hazard.kind(), hazard.note(), hazard.language()))
                        .toList(),
                written.machines(),
                written.openFindings(),
                written.tasks(),
                written.said(),
                stop.load());
    }

    private List<Code> codes(UUID homeId) {
        return codes.list(homeId).isEmpty()
                ? List.of()
                : codes.read(homeId, "visit of the day").stream()
                        .map(code -> new Code(code.kind(), code.label(), code.secret()))
                        .toList();
    }
}
