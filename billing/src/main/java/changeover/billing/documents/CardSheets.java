package changeover.billing.documents;

import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.FindingLevel;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.customers.AllEquipment;
import changeover.contracts.customers.Customer;
import changeover.contracts.customers.Customers;
import changeover.contracts.customers.Equipment;
import changeover.contracts.customers.Hazard;
import changeover.contracts.customers.Hazards;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.HomePart;
import changeover.contracts.customers.HomeParts;
import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.Businesses;
import changeover.scheduling.visits.YearOfHome;
import changeover.scheduling.visits.YearsOfHomes;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A home becomes the sheet of its house card. Keys and codes stand on it only when the caller was allowed to read them. */
@ApplicationScoped
public class CardSheets {

    private static final String FINDINGS = """
            select f.level, f.day, e.name, f.sentence_code, f.text from finding f
            left join equipment e on e.tenant_id = f.tenant_id and e.id = f.equipment_id
            where f.tenant_id = current_tenant() and f.home_id = ?::uuid and f.cleared_on is null
            order by array_position(array['do_not_use', 'urgent', 'recommended', 'information'], f.level), f.day desc limit 12
            """;
    private static final String VISITS = """
            select c.day, coalesce(x.name, m.name, ''), v.kind,
              (select count(*) from task_outcome o where o.tenant_id = c.tenant_id and o.visit_id = c.visit_id and o.outcome = 'done')
            from closure c join visit v on v.tenant_id = c.tenant_id and v.id = c.visit_id
            left join membership m on m.tenant_id = c.tenant_id and m.person_id = c.technician_id
            left join partner_visit_done d on d.tenant_id = c.tenant_id and d.visit_id = c.visit_id
            left join partner x on x.tenant_id = d.tenant_id and x.id = d.partner_id
            where c.tenant_id = current_tenant() and c.home_id = ?::uuid order by c.day desc limit 4
            """;

    @Inject
    AgroalDataSource database;

    @Inject
    Homes homes;

    @Inject
    HomeParts parts;

    @Inject
    Customers customers;

    @Inject
    AllEquipment equipment;

    @Inject
    Hazards hazards;

    @Inject
    OwnCatalogue catalogues;

    @Inject
    YearsOfHomes years;

    @Inject
    Businesses businesses;

    /**
     * Empty when the business has no such home.
     *
     * @param keys what the owner asked to have on the card, read and audited by the caller
     * @param link the address of the home's own page
     */
    public Optional<CardSheet> of(
            UUID homeId, Locale language, LocalDate today, List<CardSheet.Pair> keys, @Nullable String link) {
        return homes.get(homeId).map(home -> sheet(home, Words.in(language), today, keys, link));
    }

    private CardSheet sheet(Home home, Words words, LocalDate today, List<CardSheet.Pair> keys, @Nullable String link) {
        OwnCatalogue.Own own = catalogues.read();
        Home.Facts facts = home.facts();
        List<String> address =
                Places.lines(words, facts.unitLabel(), facts.street(), facts.city(), facts.region(), facts.postal());
        ReportWork work = new ReportWork(database, words);
        LocalDate first = today.minusMonths(3).withDayOfMonth(1);
        YearOfHome year = years.of(home.id(), new Window(first, first.plusMonths(12)), today);
        return new CardSheet(
                words.language(),
                businesses.current().name(),
                businesses.profile().facts().phone(),
                today,
                address.getFirst(),
                address.subList(1, address.size()),
                warnings(home, words),
                facts.gettingIn(),
                keys,
                people(home, words, today),
                home.toBeRead(),
                machines(home).stream()
                        .map(machine -> unit(machine, own.catalogue(), words))
                        .toList(),
                findings(home, own.catalogue(), words),
                visits(home, words),
                work.next(home.id(), today.minusDays(1)).map(work::said).orElse(null),
                year.promises().isEmpty()
                        ? null
                        : HomeYears.of(year, own.seasons().climate().seasons(), first, today, words.language()),
                link);
    }

    /** The home's own machines, then the building's. */
    List<Equipment> machines(Home home) {
        List<Equipment> machines = new ArrayList<>(equipment.ofHome(home.id()));
        home.buildingId().ifPresent(building -> machines.addAll(equipment.ofBuilding(building)));
        return machines.stream()
                .filter(machine -> machine.endedOn().isEmpty())
                .distinct()
                .toList();
    }

    private static CardSheet.Unit unit(Equipment machine, Catalogue catalogue, Words words) {
        UnitFacts facts = new UnitFacts(machine, catalogue, words);
        return new CardSheet.Unit(machine.name(), facts.big(), facts.air(), facts.rest());
    }

    private List<String> warnings(Home home, Words words) {
        return hazards.of(home.id()).stream()
                .filter(hazard -> hazard.clearedOn().isEmpty())
                .map(hazard -> warning(hazard, words))
                .toList();
    }

    private static String warning(Hazard hazard, Words words) {
        String kind = words.say("hazard." + hazard.kind());
        return hazard.note().isBlank() ? kind : kind + words.say("card.colon") + hazard.note();
    }

    private List<CardSheet.Person> people(Home home, Words words, LocalDate today) {
        Map<UUID, List<String>> roles = new LinkedHashMap<>();
        List<HomePart> played = parts.on(home.id(), today).stream()
                .sorted(Comparator.comparing(HomePart::part))
                .toList();
        for (HomePart part : played) {
            roles.computeIfAbsent(part.customerId(), id -> new ArrayList<>())
                    .add(words.say("part." + part.part().code()));
        }
        List<CardSheet.Person> people = new ArrayList<>();
        for (Customer customer : roles.isEmpty() ? List.<Customer>of() : customers.all(roles.keySet())) {
            List<String> role = roles.getOrDefault(customer.id(), List.of());
            people.add(new CardSheet.Person(
                    customer.name(), String.join(", ", role), customer.phone().orElse(null)));
        }
        return people;
    }

    private List<CardSheet.OpenFinding> findings(Home home, Catalogue catalogue, Words words) {
        return new Question(database, FINDINGS)
                .all(
                        row -> {
                            String sentence = row.getString(4);
                            String text = sentence == null
                                    ? row.getString(5)
                                    : catalogue
                                            .findSentence(sentence)
                                            .map(found -> found.wording().in(words.language()))
                                            .orElse(sentence);
                            return new CardSheet.OpenFinding(
                                    FindingLevel.ofCode(row.getString(1)),
                                    row.getObject(2, LocalDate.class),
                                    row.getString(3),
                                    text);
                        },
                        home.id());
    }

    private List<CardSheet.Visit> visits(Home home, Words words) {
        return new Question(database, VISITS)
                .all(
                        row -> new CardSheet.Visit(
                                row.getObject(1, LocalDate.class),
                                row.getString(2),
                                words.say(
                                        "card.visit",
                                        Map.of(
                                                "kind",
                                                words.say("visit." + row.getString(3)),
                                                "count",
                                                row.getInt(4)))),
                        home.id());
    }
}
