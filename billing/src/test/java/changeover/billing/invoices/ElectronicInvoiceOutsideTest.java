package changeover.billing.invoices;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.billing.ABusiness;
import changeover.contracts.PostgresForTests;
import changeover.contracts.words.Wording;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/**
 * Which column of a document's frozen rows carries each business term of EN 16931-1:2017 (clause 6.3, table 2; the numbers
 * and names from memory), so that an electronic invoice can be written from the rows alone.
 *
 * <p>Not carried, since nothing of the trade has them: project (BT-11), contract as a document (BT-12), receiving and
 * despatch advice (BT-15, 16), tender (BT-17), payee and tax representative (BT-59 to BT-69), allowances and charges of the
 * whole document (BT-92 to BT-105, hence BT-107 and BT-108 are nought). Means of payment (BT-81 to BT-91) are optional and
 * stand in the business's own facts. The specification's name (BT-24) is the writer's own. What was paid (BT-113) is nought
 * on the day of issue: payments are rows of their own, and cash is rounded (BT-114) on the payment.
 */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class ElectronicInvoiceOutsideTest {

    @Inject
    ABusiness business;

    @Inject
    Drafts drafts;

    @Inject
    Invoices invoices;

    @Inject
    Credits credits;

    /** @param column over {@code s} (invoice_issue), {@code l} (the first line) or {@code t} (the first tax) */
    private record Term(String number, String name, String column, String expected) {}

    private static final List<Term> INVOICE = List.of(
            new Term("BT-1", "number", "s.label", "F-2026-0001"),
            new Term("BT-2", "issue date", "s.day", "2026-04-01"),
            new Term("BT-3", "type code", "s.type_code", "380"),
            new Term("BT-5", "currency", "s.currency", "CAD"),
            new Term("BT-7", "tax point date", "s.tax_day", "2026-04-01"),
            new Term("BT-9", "due date", "s.due_day", "2026-05-01"),
            new Term("BT-10", "buyer reference", "s.buyer_reference", "Dept. 12"),
            new Term("BT-13", "order reference", "s.purchase_order", "PO-77"),
            new Term(
                    "BT-20",
                    "payment terms",
                    "s.terms_en || '/' || s.terms_fr",
                    "Payable within 30 days/Payable d’ici 30 jours"),
            new Term("BT-22", "note", "coalesce(s.reason_fr, 'none')", "none"),
            new Term("BT-27", "seller name", "s.seller ->> 'name'", "Lampe du Nord"),
            new Term("BT-29", "seller identifier", "(s.tenant_id is not null)", "t"),
            new Term("BT-31", "seller tax identifier", "s.seller ->> 'gstNumber'", "123456789 RT0001"),
            new Term("BT-32", "seller tax registration", "s.seller ->> 'qstNumber'", "1234567890 TQ0001"),
            new Term("BT-33", "seller legal facts", "(s.seller -> 'licence') is not null", "t"),
            new Term("BT-34", "seller electronic address", "(s.seller -> 'email') is not null", "t"),
            new Term("BT-35", "seller street", "s.seller ->> 'street'", "1, rue du Four"),
            new Term("BT-37", "seller city", "s.seller ->> 'city'", "Port-Ambroise"),
            new Term("BT-38", "seller postal code", "(s.seller -> 'postal') is not null", "t"),
            new Term("BT-39", "seller subdivision", "s.seller ->> 'region'", "QC"),
            new Term("BT-40", "seller country", "s.seller ->> 'country'", "CA"),
            new Term("BT-42", "seller telephone", "(s.seller -> 'phone') is not null", "t"),
            new Term("BT-44", "buyer name", "s.buyer ->> 'name'", "Ida Roe"),
            new Term("BT-46", "buyer identifier", "(s.customer_id is not null)", "t"),
            new Term("BT-48", "buyer tax identifier", "s.buyer ->> 'taxNumber'", "BE0000000097"),
            new Term("BT-49", "buyer electronic address", "s.buyer ->> 'email'", "ida@example.com"),
            new Term("BT-50", "buyer street", "s.buyer ->> 'street'", "12, rue des Pins"),
            new Term("BT-52", "buyer city", "s.buyer ->> 'city'", "Port-Ambroise"),
            new Term("BT-53", "buyer postal code", "s.buyer ->> 'postal'", "G0A 1A0"),
            new Term("BT-54", "buyer subdivision", "s.buyer ->> 'region'", "QC"),
            new Term("BT-55", "buyer country", "s.buyer ->> 'country'", "CA"),
            new Term("BT-72", "delivery date", "l.day", "2026-04-01"),
            new Term("BT-77", "delivery city", "s.works -> 0 ->> 'city'", "Port-Ambroise"),
            new Term("BT-80", "delivery country", "s.works -> 0 ->> 'country'", "CA"),
            new Term("BT-106", "sum of lines", "s.subtotal_minor", "24900"),
            new Term("BT-109", "total without tax", "s.subtotal_minor", "24900"),
            new Term("BT-110", "total tax", "s.tax_minor", "3729"),
            new Term("BT-112", "total with tax", "s.total_minor", "28629"),
            new Term("BT-115", "amount due", "s.total_minor", "28629"),
            new Term("BT-116", "taxable amount", "t.base_minor", "24900"),
            new Term("BT-117", "tax amount", "t.amount_minor", "1245"),
            new Term("BT-118", "tax category", "t.category", "S"),
            new Term("BT-119", "tax rate", "t.percent + 0.0", "5.0000"),
            new Term("BT-120", "exemption reason", "coalesce(t.exemption_en, 'none')", "none"),
            new Term("BT-126", "line identifier", "l.position", "1"),
            new Term("BT-127", "line note", "l.why_en", "Agreement no. 7."),
            new Term("BT-129", "quantity", "l.quantity + 0", "1.0000"),
            new Term("BT-130", "unit of Recommendation 20", "l.unit", "C62"),
            new Term("BT-131", "line net amount", "l.net_minor", "24900"),
            new Term("BT-136", "line allowance", "l.discount_minor", "0"),
            new Term("BT-138", "line allowance percent", "l.discount_percent + 0", "0.00"),
            new Term("BT-146", "net price", "l.unit_price_minor", "24900"),
            new Term(
                    "BT-151",
                    "line tax category",
                    "(select k.category from invoice_tax k where k.invoice_id = l.invoice_id"
                            + " and l.position = any (k.lines) order by k.position limit 1)",
                    "S"),
            new Term(
                    "BT-152",
                    "line tax rate",
                    "(select sum(k.percent) from invoice_tax k where k.invoice_id = l.invoice_id"
                            + " and l.position = any (k.lines))",
                    "14.9750"),
            new Term("BT-153", "item name", "l.words_fr", "Formule Confort"),
            new Term("BT-155", "seller's item identifier", "coalesce(l.item_code, 'none')", "none"));

    @Test
    void an_invoice_carries_every_term() {
        UUID tenant = business.quebec();
        UUID invoice = issued(tenant, "QC");
        read(tenant, invoice, INVOICE);
    }

    @Test
    void a_credit_note_names_the_invoice_before_it() {
        UUID tenant = business.quebec();
        UUID invoice = issued(tenant, "QC");
        UUID credit = business.in(tenant, () -> {
            UUID draft = credits.inFull(invoice, SomeDrafts.DAY, new Wording("Ended", "Résilié"));
            invoices.issue(List.of(draft), SomeDrafts.DAY);
            return draft;
        });
        read(
                tenant,
                credit,
                List.of(
                        new Term("BT-3", "type code", "s.type_code", "381"),
                        new Term("BT-10", "buyer reference", "s.buyer_reference", "Dept. 12"),
                        new Term("BT-20", "payment terms", "coalesce(s.terms_en, 'none')", "none"),
                        new Term("BT-22", "note", "s.reason_fr", "Résilié"),
                        new Term("BT-25", "preceding invoice", preceding("label"), "F-2026-0001"),
                        new Term("BT-26", "its date", preceding("day"), "2026-04-01"),
                        new Term("BT-112", "total with tax, above nought", "s.total_minor", "28629")));
    }

    private static String preceding(String column) {
        return "(select o." + column + " from invoice_issue o where o.invoice_id = s.credits_id)";
    }

    /** BR-E-10, BR-O-10: where nothing is charged, the breakdown says why. */
    @Test
    void what_is_not_taxed_says_its_category_and_why() {
        UUID small = business.open("CA-QC", "fr", null, null, true);
        read(
                small,
                issued(small, "QC"),
                List.of(
                        new Term("BT-116", "taxable amount", "s.subtotal_minor - s.tax_minor", "24900"),
                        new Term("BT-118, BT-151", "category", "s.untaxed_category", "O"),
                        new Term(
                                "BT-120",
                                "reason",
                                "s.untaxed_en || '/' || s.untaxed_fr",
                                "Small supplier, not registered for taxes/Petit fournisseur, non inscrit aux taxes")));
        UUID texas = business.open("US-TX", "en", null, null, false);
        read(
                texas,
                issued(texas, "TX"),
                List.of(
                        new Term("BT-118", "category", "t.category", "O"),
                        new Term("BT-117", "amount", "t.amount_minor", "0"),
                        new Term("BT-120", "reason", "t.exemption_en", "Residential work, not taxable"),
                        new Term("BT-151", "by lines with a tax", "coalesce(s.untaxed_category, 'none')", "none")));
    }

    private UUID issued(UUID tenant, String region) {
        return business.in(tenant, () -> {
            business.execute("update business_profile set street = '1, rue du Four', city = 'Port-Ambroise'");
            UUID customer = business.customer("Ida Roe");
            business.execute("update customer set purchase_order = 'PO-77', buyer_reference = 'Dept. 12',"
                    + " tax_number = 'BE0000000097', email = 'ida@example.com' where id = '" + customer + "'");
            UUID home = region.equals("TX") ? business.home(customer, "US", "TX") : business.home(customer, region);
            UUID draft = drafts.write(List.of(SomeDrafts.plan(customer, home, "249.00")))
                    .getFirst();
            Issuing.Outcome outcome = invoices.issue(List.of(draft), SomeDrafts.DAY);
            assertEquals("{}", outcome.refused().toString());
            return draft;
        });
    }

    private void read(UUID tenant, UUID invoice, List<Term> terms) {
        List<String> wrong = new ArrayList<>();
        business.in(tenant, () -> {
            for (Term term : terms) {
                String found = business.one("select (" + term.column() + ")::text from invoice_issue s"
                        + " left join invoice_line l on l.invoice_id = s.invoice_id and l.position = 1"
                        + " left join invoice_tax t on t.invoice_id = s.invoice_id and t.position = 1"
                        + " where s.invoice_id = '" + invoice + "'");
                if (!term.expected().equals(found) && !(term.expected().equals("t") && "true".equals(found))) {
                    wrong.add(term.number() + " " + term.name() + ": " + found);
                }
            }
        });
        assertEquals(List.of(), wrong);
    }
}
