package changeover.billing.invoices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.ABusiness;
import changeover.billing.pricing.ItemKind;
import changeover.billing.pricing.PriceBook;
import changeover.billing.pricing.PriceEntry;
import changeover.billing.pricing.Prices;
import changeover.contracts.PostgresForTests;
import changeover.contracts.money.Money;
import changeover.scheduling.closeout.VisitClosed;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** A capacitor that we fitted in a heat pump in September fails in November: who pays for the part, the hour and the trip. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class WhoAnswersForPartsTest {

    private static final LocalDate OPENED = LocalDate.of(2026, 1, 5);
    private static final LocalDate SEPTEMBER = LocalDate.of(2026, 9, 2);
    private static final LocalDate NOVEMBER = LocalDate.of(2026, 11, 17);

    @Inject
    ABusiness business;

    @Inject
    AnAgreement agreement;

    @Inject
    Event<VisitClosed> closed;

    @Inject
    Prices prices;

    /** The pump: installed by whom, when, and with what maker's warranty. */
    private record Pump(UUID home, UUID id) {}

    private Pump pump(@Nullable String installedBy, @Nullable String makerUntil) {
        agreement.part("CAP-45", "capacitor");
        prices.set(new PriceEntry(ItemKind.PART, "CAP-45", cad("80.00"), null, OPENED));
        prices.set(new PriceEntry(ItemKind.LABOUR, PriceBook.HOUR, cad("120.00"), null, OPENED));
        prices.set(new PriceEntry(ItemKind.TRAVEL, PriceBook.VISIT, cad("35.00"), null, OPENED));
        UUID home = business.home(business.customer("Ida Roe"), "QC");
        UUID id = UUID.randomUUID();
        business.execute("insert into equipment (id, home_id, kind, name, installed_on, installed_by,"
                + " maker_warranty_until) values ('" + id + "', '" + home
                + "', 'outdoor-heat-pump', 'Heat pump', '2026-06-04', " + text(installedBy) + ", " + text(makerUntil)
                + ")");
        return new Pump(home, id);
    }

    private static String text(@Nullable String value) {
        return value == null ? "null" : "'" + value + "'";
    }

    private void fittedInSeptember(Pump pump) {
        UUID visit = agreement.visit(pump.home(), null);
        business.execute("insert into closure (visit_id, home_id, technician_id, day, minutes, minutes_planned,"
                + " extra_minutes, received_by, closed_at) values ('" + visit + "', '" + pump.home() + "', '"
                + UUID.randomUUID() + "', '" + SEPTEMBER + "', 60, 60, 0, 'Ida Roe', '" + SEPTEMBER + "T12:00:00Z')");
        business.execute("insert into part_used (id, visit_id, part_code, quantity, place_id, equipment_id, why)"
                + " select uuidv7(), '" + visit + "', 'CAP-45', 1, id, '" + pump.id()
                + "', 'repair' from stock_place where kind = 'shelf' limit 1");
        business.execute(
                "insert into labour_guarantee (work, from_day, months) values ('repair', '" + OPENED + "', 12)");
    }

    private void lawOfQuebec() {
        business.execute("insert into legal_warranty (region, from_day, months, source) values ('CA-QC', '" + OPENED
                + "', 36, 'The act as our lawyer read it')");
    }

    /** The lines of a call in November that puts one capacitor into the pump. */
    private String fails(Pump pump, int onSite, int beyond, int tasks) {
        UUID visit = agreement.visit(pump.home(), null);
        if (tasks > 0) {
            business.execute("insert into visit_task (visit_id, task_code, wording_en, wording_fr, who, minutes,"
                    + " due_from, due_until, reason_en, reason_fr, basis) values ('" + visit
                    + "', 'coil', 'Coil', 'Serpentin', 'technician', " + tasks
                    + ", '2026-11-01', '2026-12-01', 'Asked', 'Demandé', 'maker')");
            business.execute("insert into task_outcome (id, visit_id, visit_task_id, outcome) select uuidv7(), '"
                    + visit + "', id, 'done' from visit_task where visit_id = '" + visit + "'");
        }
        closed.fire(new VisitClosed(
                visit,
                pump.home(),
                null,
                "call",
                null,
                UUID.randomUUID(),
                NOVEMBER,
                onSite,
                60,
                beyond,
                List.of(new VisitClosed.Part(UUID.randomUUID(), "CAP-45", BigDecimal.ONE, pump.id(), "repair")),
                List.of()));
        return business.one("""
                select string_agg(item_code || ' ' || trim_scale(quantity) || ' ' || net_minor, ', ' order by position)
                  from invoice_line where visit_id = '%s'""".formatted(visit));
    }

    private String reason(String item) {
        return business.one(
                "select why_fr from invoice_line where item_code = '" + item + "' order by id desc limit 1");
    }

    @Test
    void the_maker_gives_the_part_and_we_the_hour_and_the_trip() {
        business.in(business.quebec(), () -> {
            Pump pump = pump(null, "2031-06-03");
            assertEquals("hour 1 12000, CAP-45 1 0, visit 1 3500", fails(pump, 60, 0, 0));
            fittedInSeptember(pump);
            assertEquals("promised 60 0, CAP-45 1 0", fails(pump, 60, 0, 0));
            assertTrue(
                    reason("promised")
                            .endsWith("nous avons posé cette pièce le 2 septembre 2026 et en répondons, jusqu’au"
                                    + " 1er septembre 2027."),
                    reason("promised"));
            assertTrue(reason("CAP-45").endsWith("la garantie du fabricant, jusqu’au 3 juin 2031."), reason("CAP-45"));
        });
    }

    @Test
    void other_work_on_the_same_visit_is_charged_and_the_trip_with_it() {
        business.in(business.quebec(), () -> {
            Pump pump = pump(null, null);
            fittedInSeptember(pump);
            assertEquals("promised 30 0, hour 2 24000, CAP-45 1 0, visit 1 3500", fails(pump, 150, 120, 0));
            assertEquals("promised 45 0, hour 0.75 9000, CAP-45 1 0, visit 1 3500", fails(pump, 90, 0, 45));
        });
    }

    @Test
    void the_law_asks_us_only_for_a_machine_whose_card_names_us() {
        for (String installer : new String[] {null, "", "Chauffage Aubin"}) {
            business.in(business.quebec(), () -> {
                lawOfQuebec();
                assertEquals(
                        "hour 1 12000, CAP-45 1 8000, visit 1 3500", fails(pump(installer, null), 60, 0, 0), installer);
            });
        }
        business.in(business.quebec(), () -> {
            lawOfQuebec();
            Pump pump = pump(" LAMPE du Nord", "2031-06-03");
            assertEquals("promised 60 0, CAP-45 1 0", fails(pump, 60, 0, 0), "the maker's part, the law's hour");
            assertTrue(reason("promised").contains("(The act as our lawyer read it), jusqu’au 3 juin 2029."));
            business.execute("update equipment set maker_warranty_until = null");
            assertEquals("promised 60 0, CAP-45 1 0", fails(pump, 60, 0, 0));
        });
    }

    private static Money cad(String amount) {
        return Money.of(amount, "CAD");
    }
}
