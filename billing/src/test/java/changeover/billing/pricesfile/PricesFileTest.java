package changeover.billing.pricesfile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import changeover.billing.ABusiness;
import changeover.billing.invoices.Drafts;
import changeover.billing.invoices.Invoices;
import changeover.billing.invoices.SomeDrafts;
import changeover.billing.pricing.ItemKind;
import changeover.billing.pricing.MarkUp;
import changeover.billing.pricing.PriceEntry;
import changeover.billing.pricing.Prices;
import changeover.billing.pricing.PricingRules;
import changeover.contracts.PostgresForTests;
import changeover.contracts.money.Money;
import changeover.contracts.words.Refused;
import changeover.contracts.words.Wording;
import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.Parts;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class PricesFileTest {

    static final LocalDate DAY = LocalDate.of(2027, 1, 1);

    static final String CANONICAL = """
            kind,item,name,unit,from,price,cost,currency
            labour,hour,,,2026-01-01,112.00,57.00,CAD
            labour,hour,,,2027-01-01,118.50,57.00,CAD
            part,FIL-1,'=Filtre,C62,2026-01-01,14.00,4.20,CAD
            part,PAD-1,Tampon,C62,2026-06-01,,4.25,CAD
            travel,no-access,,,2026-01-01,60.00,,CAD
            """.replace("\n", "\r\n");

    @Inject
    ABusiness business;

    @Inject
    PricesFile file;

    @Inject
    Parts parts;

    @Inject
    PricingRules rules;

    @Inject
    Prices prices;

    @Inject
    Drafts drafts;

    @Inject
    Invoices invoices;

    private UUID shop() {
        UUID tenant = business.quebec();
        business.in(tenant, () -> {
            parts.keep(new KnownPart("FIL-1", new Wording("=Filter", "=Filtre"), "C62", "filter", null));
            parts.keep(new KnownPart("PAD-1", new Wording("Pad", "Tampon"), "C62", null, null));
            rules.setByCost(List.of(new MarkUp(
                    MarkUp.Scope.COST,
                    "",
                    Money.of("0.00", "CAD"),
                    new BigDecimal("100"),
                    Money.of("0.05", "CAD"),
                    LocalDate.of(2026, 1, 1))));
        });
        return tenant;
    }

    private String bring(UUID tenant, String csv, boolean dry, boolean onlyWhole) {
        return business.in(tenant, () -> {
            PricesFile.Outcome outcome = file.bring(csv.getBytes(StandardCharsets.UTF_8), DAY, dry, onlyWhole);
            return outcome.count(PriceChange.What.NEW) + " new, " + outcome.count(PriceChange.What.CHANGED)
                    + " changed, " + outcome.count(PriceChange.What.UNCHANGED) + " unchanged, "
                    + outcome.faults().size() + " refused, " + outcome.written() + " written";
        });
    }

    private String take(UUID tenant) {
        return business.in(tenant, () -> new String(file.take(), StandardCharsets.UTF_8));
    }

    @Test
    void a_look_writes_nothing_a_yes_writes_and_the_same_file_again_changes_nothing() {
        UUID tenant = shop();
        assertEquals("4 new, 1 changed, 0 unchanged, 0 refused, 0 written", bring(tenant, CANONICAL, true, true));
        assertEquals("kind,item,name,unit,from,price,cost,currency\r\n", take(tenant));
        assertEquals("4 new, 1 changed, 0 unchanged, 0 refused, 5 written", bring(tenant, CANONICAL, false, true));
        assertEquals(CANONICAL, take(tenant));
        assertEquals("0 new, 0 changed, 5 unchanged, 0 refused, 0 written", bring(tenant, CANONICAL, false, true));
        assertEquals(CANONICAL, take(tenant));
    }

    @Test
    void semicolons_a_byte_order_mark_french_amounts_and_any_order_of_columns_are_understood() {
        UUID tenant = shop();
        assertEquals("2 new, 0 changed, 0 unchanged, 0 refused, 2 written", bring(tenant, """
                \uFEFFprice;item;cost
                38,50 $;FIL-1;15,75
                ;PAD-1;4,25
                """, false, true));
        assertEquals("""
                kind,item,name,unit,from,price,cost,currency
                part,FIL-1,'=Filtre,C62,2027-01-01,38.50,15.75,CAD
                part,PAD-1,Tampon,C62,2027-01-01,,4.25,CAD
                """.replace("\n", "\r\n"), take(tenant));
    }

    /** Issued in April 2026: the price of January stays, its cost may be put right, and what begins later is free. */
    @Test
    void a_price_that_stands_on_an_issued_document_is_never_written_over() {
        UUID tenant = shop();
        bring(tenant, CANONICAL, false, true);
        business.in(tenant, () -> {
            UUID customer = business.customer("Ida Roe");
            LocalDate day = LocalDate.of(2026, 4, 10);
            UUID draft = drafts.write(List.of(SomeDrafts.on(day, customer, business.home(customer, "QC"), "14.00")))
                    .getFirst();
            business.execute("update invoice_line set kind = 'part', item_code = 'FIL-1', day = '" + day
                    + "' where invoice_id = '" + draft + "'");
            invoices.issue(draft, day);
            PriceEntry dearer = filter("15.00", LocalDate.of(2026, 1, 1));
            assertEquals(
                    "price.charged",
                    assertThrows(Refused.class, () -> prices.set(dearer))
                            .first()
                            .code());
            prices.set(filter("15.00", LocalDate.of(2026, 5, 1)));
            prices.set(filter("16.00", LocalDate.of(2026, 5, 1)));
        });
        assertEquals("0 new, 0 changed, 0 unchanged, 1 refused, 0 written", bring(tenant, """
                kind,item,from,price,cost
                part,FIL-1,2026-01-01,15.00,4.20
                """, false, false));
        assertEquals("0 new, 1 changed, 0 unchanged, 0 refused, 1 written", bring(tenant, """
                kind,item,from,price,cost
                part,FIL-1,2026-01-01,14.00,4.60
                """, false, true));
    }

    private static PriceEntry filter(String price, LocalDate from) {
        return new PriceEntry(ItemKind.PART, "FIL-1", Money.of(price, "CAD"), Money.of("4.20", "CAD"), from);
    }

    @Test
    void each_refused_row_says_its_line_and_why_and_stays_out() {
        UUID tenant = shop();
        String bad = """
                kind,item,from,price,cost,currency
                part,FIL-1,2027-01-01,15.00,,CAD
                part,NONE-9,,15.00,,
                part,FIL-1,,"1,234",,
                tool,FIL-1,,15.00,,
                labour,hour,,,57.00,
                part,PAD-1,31/01/2027,9.00,,
                part,FIL-1,2027-01-01,16.00,,CAD
                part,PAD-1,2025-01-01,,4.25,
                part,FIL-1,2028-01-01,15.50,,USD
                travel,visit,2028-01-01,-5,,
                """;
        assertEquals(
                "3 item pricesfile.item-unknown, 4 price pricesfile.twofold, 5 kind pricesfile.kind, 6 price price.or-cost,"
                        + " 7 from pricesfile.day, 8 item pricesfile.twice, 9 price price.no-mark-up,"
                        + " 10 currency pricesfile.currency, 11 price pricesfile.amount",
                business.in(
                        tenant,
                        () -> file.bring(bad.getBytes(StandardCharsets.UTF_8), DAY, true, true).faults().stream()
                                .map(fault -> fault.row() + " " + fault.column() + " "
                                        + fault.why().code())
                                .collect(Collectors.joining(", "))));
        assertEquals("1 new, 0 changed, 0 unchanged, 9 refused, 0 written", bring(tenant, bad, false, true));
        assertEquals("1 new, 0 changed, 0 unchanged, 9 refused, 1 written", bring(tenant, bad, false, false));
    }

    @Test
    void a_file_that_is_no_price_file_is_refused_whole() {
        UUID tenant = shop();
        for (String[] one : new String[][] {
            {"", "pricesfile.empty"},
            {"item,cost\n", "pricesfile.title-missing"},
            {"item,price,colour\n", "pricesfile.title-unknown"},
            {"item,price,item\n", "pricesfile.title-twice"},
            {"item,price\n\"FIL-1", "pricesfile.not-a-table"}
        }) {
            Refused refused = assertThrows(Refused.class, () -> bring(tenant, one[0], true, true), one[0]);
            assertEquals(one[1], refused.first().code());
        }
    }

    @Test
    void a_change_says_what_held_before_whatever_the_order_of_the_rows() {
        UUID tenant = shop();
        bring(tenant, CANONICAL, false, true);
        String later = """
                item,from,price,cost
                FIL-1,2027-03-01,16.00,4.20
                FIL-1,2027-02-01,15.00,4.20
                FIL-1,2027-04-01,16.00,4.20
                """;
        assertEquals(
                "CHANGED 15.00 16.00, CHANGED 14.00 15.00, UNCHANGED 16.00 16.00",
                business.in(
                        tenant,
                        () -> file.bring(later.getBytes(StandardCharsets.UTF_8), DAY, true, true).changes().stream()
                                .map(change -> change.what() + " "
                                        + change.before().price().decimal() + " "
                                        + change.now().price().decimal())
                                .collect(Collectors.joining(", "))));
    }

    @Test
    void a_file_without_costs_leaves_them_as_they_are() {
        UUID tenant = shop();
        bring(tenant, CANONICAL, false, true);
        assertEquals(
                "0 new, 1 changed, 1 unchanged, 0 refused, 1 written",
                bring(tenant, "item,price,from\nFIL-1,15.25,2027-05-01\nFIL-1,14.00,2027-02-01\n", false, true));
        assertEquals(true, take(tenant).contains("FIL-1,'=Filtre,C62,2027-05-01,15.25,4.20,CAD"));
    }
}
