package changeover.billing.invoices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import changeover.billing.ABusiness;
import changeover.billing.pricing.ItemKind;
import changeover.billing.pricing.LabourTerms;
import changeover.billing.pricing.MarkUp;
import changeover.billing.pricing.PriceBook;
import changeover.billing.pricing.PriceEntry;
import changeover.billing.pricing.PriceRow;
import changeover.billing.pricing.Prices;
import changeover.billing.pricing.PricingRules;
import changeover.billing.pricing.TravelZone;
import changeover.billing.pricing.Zones;
import changeover.contracts.PostgresForTests;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.words.Refused;
import changeover.contracts.words.Wording;
import changeover.scheduling.closeout.VisitClosed;
import changeover.scheduling.visits.Visits;
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

/** What a business's own rules make of a visit's draft: mark-ups, minimum, zones, and the fee for a closed door. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class VisitFeesTest {

    private static final LocalDate DAY = LocalDate.of(2026, 4, 7);

    @Inject
    ABusiness business;

    @Inject
    AnAgreement agreement;

    @Inject
    Event<VisitClosed> closed;

    @Inject
    Prices prices;

    @Inject
    PricingRules rules;

    @Inject
    Zones zones;

    @Inject
    Visits visits;

    @Inject
    Invoices invoices;

    @Inject
    Businesses businesses;

    @Test
    void a_parts_price_follows_its_cost_and_the_rule_of_the_day() {
        UUID tenant = business.quebec();
        business.in(tenant, () -> agreement.part("filter-16x25x1", "filter"));
        PriceRow cost = new PriceRow(ItemKind.PART, "filter-16x25x1", null, null, cad("4.25"), DAY);
        Refused refused = assertThrows(Refused.class, () -> business.in(tenant, () -> prices.write(cost)));
        assertEquals("price.no-mark-up", refused.first().code());
        business.in(tenant, () -> {
            rules.set(new MarkUp(
                    MarkUp.Scope.KIND, "filter", cad("0.00"), new BigDecimal("110"), cad("0.05"), DAY.minusYears(1)));
            prices.write(cost);
            assertEquals("filter-16x25x1 895", closed("call", home("G0A 1A0"), 0, part("filter-16x25x1")));
        });
    }

    @Test
    void a_price_on_an_issued_document_never_changes() {
        business.in(business.quebec(), () -> {
            price(ItemKind.LABOUR, PriceBook.HOUR, "96.00");
            assertEquals("hour 9600", closed("call", home("G0A 1A0"), 60));
            UUID draft = UUID.fromString(business.one("select id from invoice"));
            invoices.issue(draft, DAY);
            assertEquals(
                    "price.charged",
                    assertThrows(Refused.class, () -> price(ItemKind.LABOUR, PriceBook.HOUR, "120.00"))
                            .first()
                            .code());
            rules.set(new LabourTerms(DAY, 60, 120));
            assertEquals("9600 11038", business.one("select subtotal_minor || ' ' || total_minor from invoice_issue"));
            assertEquals("hour 9600", business.one("select item_code || ' ' || net_minor from invoice_line"));
            assertEquals("hour 19200", closed("call", home("G0A 1A0"), 10));
        });
    }

    @Test
    void a_trip_costs_the_fee_of_its_zone() {
        business.in(business.quebec(), () -> {
            businesses.profile().standsAt(new BigDecimal("47.000000"), new BigDecimal("-70.000000"));
            businesses.keep();
            price(ItemKind.TRAVEL, PriceBook.VISIT, "45.00");
            price(ItemKind.TRAVEL, "coast", "80.00");
            price(ItemKind.TRAVEL, "near", "30.00");
            zones.set(zone("coast", null, "G0A"));
            zones.set(zone("near", 12));
            assertEquals("coast 8000", closed("call", home("G0A 1A0"), 0));
            UUID tenKilometresNorth = home("H0H 0H0");
            business.execute(
                    "update home set latitude = 47.09, longitude = -70 where id = '" + tenKilometresNorth + "'");
            assertEquals("near 3000", closed("call", tenKilometresNorth, 0));
            assertEquals(
                    "Zone near: 10.0 km from our shop as the crow flies. Not covered by a plan.",
                    business.one("select why_en from invoice_line where item_code = 'near'"));
            assertEquals("visit 4500", closed("call", home("H0H 0H0"), 0));
            zones.set(new TravelZone("near", new Wording("near", "near"), List.of(), 12, DAY, true));
            assertEquals("visit 4500", closed("call", tenKilometresNorth, 0));
        });
    }

    @Test
    void two_zones_never_answer_for_one_home() {
        UUID tenant = business.quebec();
        business.in(tenant, () -> zones.set(zone("coast", 20, "G0A", "G0B")));
        Refused refused =
                assertThrows(Refused.class, () -> business.in(tenant, () -> zones.set(zone("hills", 20, "G0B"))));
        assertEquals(
                List.of("zone.postal-taken", "zone.km-taken"),
                refused.refusals().stream().map(one -> one.code()).toList());
    }

    @Test
    void a_closed_door_costs_its_fee_once_and_our_own_fault_nothing() {
        business.in(business.quebec(), () -> {
            assertEquals("none", ended("no_access", DAY, null), "no fee is set");
            price(ItemKind.TRAVEL, PriceBook.NO_ACCESS, "60.00");
            assertEquals("none", ended("no_access", null, null), "nobody was given a day");
            assertEquals("none", ended("not_kept", DAY, null));
            assertEquals("none", ended("cancelled", DAY, null));
            UUID home = home("G0A 1A0");
            UUID payer =
                    UUID.fromString(business.one("select customer_id from home_part where home_id = '" + home + "'"));
            UUID plan = agreement.inForce(home, payer, DAY.minusMonths(1), 1);
            UUID visit = agreement.visit(home, plan);
            appointed(visit, DAY);
            visits.noAccess(visit, DAY.plusDays(1), "Nobody at home");
            assertEquals("no-access billable 2026-04-07 1 6000 0 6000", fee(visit), "no plan takes anything off");
            UUID draft = UUID.fromString(business.one("select id from invoice where visit_id = '" + visit + "'"));
            invoices.issue(draft, DAY.plusDays(1));
            assertEquals("6000 899", business.one("select subtotal_minor || ' ' || tax_minor from invoice_issue"));
            assertEquals("1", business.one("select count(*) from invoice where visit_id = '" + visit + "'"));
        });
        business.in(business.quebec(), () -> {
            price(ItemKind.TRAVEL, PriceBook.NO_ACCESS, "60.00");
            assertEquals("none", ended("no_access", DAY, "return"), "we came back for our own work");
        });
    }

    private String ended(String how, @Nullable LocalDate appointed, @Nullable String kind) {
        UUID visit = agreement.visit(home("G0A 1A0"), null);
        if (kind != null) {
            business.execute("update visit set kind = '" + kind + "' where id = '" + visit + "'");
        }
        if (appointed != null) {
            appointed(visit, appointed);
        }
        switch (how) {
            case "no_access" -> visits.noAccess(visit, DAY, "Nobody at home");
            case "cancelled" -> visits.cancel(visit, DAY, "Not wanted");
            default -> visits.notKept(visit, DAY, "The van broke down");
        }
        return fee(visit);
    }

    private void appointed(UUID visit, LocalDate day) {
        UUID technician = UUID.randomUUID();
        business.execute("insert into membership (person_id, role, name, email, language) values ('" + technician
                + "', 'technician', 'Rolf Ebner', '" + technician + "@example.com', 'fr')");
        business.execute("insert into appointment (visit_id, technician_id, day, starts, ends) values ('" + visit
                + "', '" + technician + "', '" + day + "', '09:00', '10:00')");
    }

    private String fee(UUID visit) {
        return business.one("""
                select item_code || ' ' || coverage || ' ' || day || ' ' || trim_scale(quantity) || ' '
                       || unit_price_minor || ' ' || discount_minor || ' ' || net_minor
                  from invoice_line where visit_id = '%s'""".formatted(visit));
    }

    private String closed(String kind, UUID home, int minutes, VisitClosed.Part... parts) {
        UUID visit = agreement.visit(home, null);
        closed.fire(new VisitClosed(
                visit, home, null, kind, null, UUID.randomUUID(), DAY, minutes, 60, 0, List.of(parts), List.of()));
        return business.one("""
                select string_agg(item_code || ' ' || net_minor, ', ' order by position)
                  from invoice_line where visit_id = '%s'""".formatted(visit));
    }

    private UUID home(String postal) {
        UUID home = business.home(business.customer("Ida Roe"), "QC");
        business.execute("update home set postal = '" + postal + "' where id = '" + home + "'");
        return home;
    }

    private void price(ItemKind kind, String item, String price) {
        prices.set(new PriceEntry(kind, item, cad(price), null, DAY));
    }

    private static TravelZone zone(String code, @Nullable Integer km, String... postals) {
        return new TravelZone(code, new Wording(code, code), List.of(postals), km, DAY.minusDays(30), false);
    }

    private static VisitClosed.Part part(String code) {
        return new VisitClosed.Part(UUID.randomUUID(), code, BigDecimal.ONE, null, "extra");
    }

    private static Money cad(String amount) {
        return Money.of(amount, "CAD");
    }
}
