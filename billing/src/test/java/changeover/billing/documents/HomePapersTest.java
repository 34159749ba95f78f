package changeover.billing.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.ABusiness;
import changeover.billing.notices.LettersToPrint;
import changeover.billing.notices.OfferMail;
import changeover.billing.notices.Outbox;
import changeover.billing.notices.OutboxMessage;
import changeover.contracts.PostgresForTests;
import changeover.contracts.agreements.Agreements;
import changeover.contracts.agreements.Offers;
import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.Task;
import changeover.contracts.customers.AllEquipment;
import changeover.contracts.customers.Customer;
import changeover.contracts.customers.Customers;
import changeover.contracts.customers.Equipment;
import changeover.contracts.customers.Hazard;
import changeover.contracts.customers.Hazards;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.HomeParts;
import changeover.contracts.customers.Homes;
import changeover.contracts.money.Money;
import changeover.contracts.plans.Plan;
import changeover.contracts.plans.PlanFacts;
import changeover.contracts.plans.Plans;
import changeover.contracts.words.Wording;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class HomePapersTest {

    private static final LocalDate DAY = LocalDate.of(2026, 4, 1);
    private static final List<String> KINDS = List.of("outdoor-heat-pump", "filter-slot", "humidifier-bypass", "hrv");

    @Inject
    ABusiness business;

    @Inject
    Customers customers;

    @Inject
    Homes homes;

    @Inject
    HomeParts parts;

    @Inject
    AllEquipment equipment;

    @Inject
    Hazards hazards;

    @Inject
    Plans plans;

    @Inject
    Offers offers;

    @Inject
    Agreements agreements;

    @Inject
    OfferMail offerMail;

    @Inject
    Outbox outbox;

    @Inject
    LettersToPrint letters;

    @Inject
    DocumentsToMake toMake;

    @Inject
    CardSheets cards;

    @Inject
    TagSheets tags;

    @Test
    void an_offer_is_written_to_whoever_signs_with_its_paper_and_printed_when_they_have_no_mail() {
        UUID tenant = business.quebec();
        UUID offer = business.in(tenant, () -> {
            UUID home = home();
            Plan plan = plan();
            UUID id =
                    agreements.offer(offers.forHome(home, plan.id(), DAY, DAY)).id();
            offerMail.write(List.of(id));
            offerMail.write(List.of(id));
            return id;
        });
        assertEquals(1, toMake.makePending(tenant, 10));
        Document paper = toMake.newest(tenant, PaperKind.OFFER, offer).orElseThrow();
        String text = Judged.archived("offer-made", paper.bytes());
        for (String said : new String[] {
            "Offre",
            "Mara Quill",
            "Confort",
            "249,00",
            "286,29 $",
            "TPS/GST 5 %",
            "TVQ/QST 9,975 %",
            "10 % de remise sur le reste",
            "2 visites dans l’année",
            "Code civil du Québec",
            "Quand nous venons"
        }) {
            assertTrue(text.contains(said), said + " in\n" + text);
        }
        business.in(tenant, () -> {
            assertEquals(1, outbox.countToPrint());
            OutboxMessage letter = outbox.about(offer).getFirst();
            assertTrue(letter.subject().startsWith("Notre offre pour le 12 Fen Road"), letter.subject());
            LettersToPrint.Batch batch = letters.batch().orElseThrow();
            assertEquals(1 + Judged.pages(paper.bytes()), Judged.pages(batch.pdf()));
            outbox.printed(batch.messages());
            assertTrue(letters.batch().isEmpty());
        });
    }

    @Test
    void a_home_gets_its_card_and_its_tags() {
        UUID tenant = business.quebec();
        business.in(tenant, () -> {
            UUID home = home();
            CardSheet card = cards.of(home, Locale.CANADA_FRENCH, DAY, List.of(), "https://example.com/h")
                    .orElseThrow();
            String text = Judged.archived("card-made", HouseCardPdf.bytes(card));
            for (String said : new String[] {
                "12 Fen Road",
                "Chien : dans la cour",
                "signe, paie, habite ici",
                "16 × 25 × 4",
                "L’air va vers la droite",
                "Nº de série",
                "SN-4711",
                "La clé est chez le voisin."
            }) {
                assertTrue(text.contains(said), said + " in\n" + text);
            }
            TagSheet sheet = tags.of(home, List.of(), Locale.CANADA_FRENCH, DAY, "https://example.com/h")
                    .orElseThrow();
            assertEquals(KINDS.size(), sheet.tags().size());
            String tagged = Judged.archived("tags-made", TagPdf.letter(sheet));
            assertTrue(tagged.contains("16 × 25 × 4") && tagged.contains("à relever"), tagged);
            assertTrue(cards.of(UUID.randomUUID(), Locale.CANADA, DAY, List.of(), null)
                    .isEmpty());
        });
    }

    private UUID home() {
        Customer customer = customers.add(Customer.Facts.of("Mara Quill", "fr", "555-0142", null));
        Home home = homes.add(new Home.Facts(
                null,
                null,
                "12 Fen Road",
                "Port-Ambroise",
                "QC",
                "G0A 1A0",
                "CA",
                null,
                null,
                "residential",
                1990,
                "La clé est chez le voisin.",
                false));
        parts.beginAll(home.id(), customer.id(), DAY.minusYears(1));
        hazards.add(Hazard.seen(home.id(), "dog", "dans la cour", "fr", DAY));
        for (String kind : KINDS) {
            Map<String, String> fits = kind.equals("filter-slot")
                    ? Map.of("size", "16x25", "thickness", "4", "direction", "right")
                    : Map.of();
            String model = kind.equals("outdoor-heat-pump") ? "XW-36" : null;
            String serial = kind.equals("outdoor-heat-pump") ? "SN-4711" : null;
            equipment.addToHome(
                    home.id(),
                    new Equipment.Facts(
                            null,
                            kind,
                            "Appareil " + kind,
                            null,
                            model,
                            serial,
                            null,
                            null,
                            null,
                            null,
                            null,
                            null,
                            fits,
                            Map.of()));
        }
        return home.id();
    }

    private Plan plan() {
        List<PlanFacts.Promise> promises = new ArrayList<>();
        for (String kind : KINDS) {
            Catalogue.shipped().tasksOf(kind).stream()
                    .limit(3)
                    .map(Task::code)
                    .map(code -> new PlanFacts.Promise(code, null))
                    .forEach(promises::add);
        }
        Plan plan = plans.draft(new PlanFacts(
                "comfort",
                new Wording("Comfort", "Confort"),
                2,
                Money.of("249.00", "CAD"),
                new BigDecimal("10.00"),
                1,
                30,
                false,
                promises.stream().distinct().toList(),
                List.of(),
                List.of()));
        plan.putOnSale(DAY.minusYears(1));
        plans.keep();
        return plan;
    }
}
