package changeover.web.office;

import changeover.billing.documents.band.HomeYear;
import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.customers.AccessCodes;
import changeover.contracts.customers.AllEquipment;
import changeover.contracts.customers.Buildings;
import changeover.contracts.customers.Equipment;
import changeover.contracts.customers.Hazards;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Wording;
import changeover.scheduling.visits.YearOfHome;
import changeover.scheduling.visits.YearsOfHomes;
import changeover.web.session.MachineInWords;
import changeover.web.session.ShutInWords;
import changeover.web.session.YearOfTheHome;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Puts a house card together from what every part of the business knows of a home. */
@ApplicationScoped
public class HouseCards {

    private static final Wording WHOLE_HOME = new Wording("The home", "La maison");

    @Inject
    Homes homes;

    @Inject
    Buildings buildings;

    @Inject
    PeopleOfHomes people;

    @Inject
    Hazards hazards;

    @Inject
    ShutInWords shut;

    @Inject
    AccessCodes codes;

    @Inject
    AllEquipment equipment;

    @Inject
    OwnCatalogue catalogue;

    @Inject
    YearsOfHomes years;

    @Inject
    DealsOfHomes deals;

    @Inject
    TripsOfHomes trips;

    @Inject
    FindingsOfHomes findings;

    @Inject
    Today today;

    /** The card in the reader's language; empty when there is no home of that id here. */
    public Optional<HouseCard> of(UUID id, Locale locale) {
        return homes.get(id).map(home -> card(home, locale));
    }

    private HouseCard card(Home home, Locale locale) {
        LocalDate day = today.day();
        OwnCatalogue.Own own = catalogue.read();
        HouseCard.Deal deal = deals.of(home.id(), day).orElse(null);
        LocalDate begins = deal == null ? day.withDayOfYear(1) : deal.from().withDayOfMonth(1);
        YearOfHome year = years.of(home.id(), new Window(begins, begins.plusMonths(12)), day);
        HomeYear drawn =
                YearOfTheHome.of(year, begins, day, own.seasons().climate().seasons(), WHOLE_HOME, locale);
        List<Equipment> machines = equipment.ofHome(home.id());
        UUID buildingId = home.buildingId().orElse(null);
        List<Equipment> common = buildingId == null ? List.of() : equipment.ofBuilding(buildingId);
        List<Equipment> gone = equipment.takenOutOf(home.id());
        var lasts = new LastAndNext(year, locale);
        return new HouseCard(
                home.id(),
                home.line(),
                place(home.facts()),
                buildingId == null
                        ? null
                        : buildings
                                .get(buildingId)
                                .map(one -> new HouseCard.Building(one.id(), one.name()))
                                .orElse(null),
                home.toBeRead(),
                home.facts().gettingIn(),
                people.today(home.id(), day),
                hazards.of(home.id()).stream()
                        .map(one -> new HouseCard.Danger(one.id(), one.kind(), one.note(), one.seenOn()))
                        .toList(),
                shut.of(home.id(), locale),
                codes.list(home.id()),
                deal,
                findings.openIn(home.id(), named(machines, common, gone), own.catalogue(), locale),
                inWords(machines, own.catalogue(), lasts, locale),
                inWords(common, own.catalogue(), lasts, locale),
                gone.stream()
                        .map(one -> new HouseCard.Gone(
                                one.id(), one.name(), one.endedOn().orElse(day)))
                        .toList(),
                drawn,
                trips.coming(year),
                trips.past(year));
    }

    private static java.util.Map<UUID, String> named(
            List<Equipment> here, List<Equipment> common, List<Equipment> gone) {
        return Stream.of(here, common, gone)
                .flatMap(List::stream)
                .collect(Collectors.toMap(Equipment::id, Equipment::name, (a, b) -> a));
    }

    private static List<MachineInWords> inWords(
            List<Equipment> machines, Catalogue trade, LastAndNext lasts, Locale locale) {
        var said = new ArrayList<MachineInWords>();
        for (Equipment machine : machines) {
            said.add(MachineInWords.of(machine, trade, locale).with(lasts.of(machine.id())));
        }
        return said;
    }

    static String place(Home.Facts facts) {
        return Stream.of(facts.region(), orEmpty(facts.postal()))
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining("\u00a0"));
    }

    private static String orEmpty(@Nullable String text) {
        return text == null ? "" : text;
    }
}
