package changeover.billing.invoices;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.billing.ABusiness;
import changeover.billing.BooksHold;
import changeover.contracts.PostgresForTests;
import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** Credit notes of one invoice that are issued together give back no more, and no other cents, than one after the other. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class CreditsTogetherTest {

    private static final Wording WHY = new Wording("Goodwill", "Geste");

    @Inject
    ABusiness business;

    @Inject
    BooksHold books;

    @Inject
    Drafts drafts;

    @Inject
    Invoices invoices;

    @Inject
    Credits credits;

    @Test
    void the_second_of_two_in_full_is_refused() {
        business.in(business.quebec(), () -> {
            UUID invoice = issued("249.00");
            UUID first = credits.inFull(invoice, SomeDrafts.DAY, WHY);
            UUID second = credits.inFull(invoice, SomeDrafts.DAY, WHY);
            Issuing.Outcome outcome = invoices.issue(List.of(first, second), SomeDrafts.DAY);
            assertEquals(1, outcome.issued().size());
            assertEquals(
                    "credit.more-than-charged",
                    outcome.refused().values().iterator().next().code());
            books.check();
        });
    }

    /** 100.07 in Quebec is taxed 5.00 and 9.98; in three parts of 33.36, 33.36 and 33.35 no cent is lost or made. */
    @Test
    void parts_issued_together_give_back_the_same_cents_as_one_by_one() {
        business.in(business.quebec(), () -> {
            UUID together = issued("100.07");
            List<UUID> three = parts(together);
            assertEquals(3, invoices.issue(three, SomeDrafts.DAY).issued().size());
            UUID alone = issued("100.07");
            for (UUID part : parts(alone)) {
                invoices.issue(part, SomeDrafts.DAY);
            }
            assertEquals(taxes(alone), taxes(together));
            assertEquals(
                    business.one("select tax_minor from invoice_issue where invoice_id = '" + together + "'"),
                    business.one("select sum(tax_minor) from invoice_issue where credits_id = '" + together + "'"));
            books.check();
        });
    }

    @Test
    void nothing_is_issued_over_more_than_a_field_takes() {
        business.in(business.quebec(), () -> {
            UUID customer = business.customer("Ida Roe");
            UUID home = business.home(customer, "QC");
            UUID draft = drafts.write(List.of(SomeDrafts.plan(customer, home, "99999999.99")))
                    .getFirst();
            assertEquals(
                    "invoice.too-much",
                    invoices.issue(List.of(draft), SomeDrafts.DAY)
                            .refused()
                            .get(draft)
                            .code());
        });
    }

    private UUID issued(String net) {
        UUID customer = business.customer("Ida Roe");
        UUID home = business.home(customer, "QC");
        UUID draft = drafts.write(List.of(SomeDrafts.plan(customer, home, net))).getFirst();
        invoices.issue(draft, SomeDrafts.DAY);
        return draft;
    }

    private List<UUID> parts(UUID invoice) {
        return List.of("33.36", "33.36", "33.35").stream()
                .map(net -> credits.inPart(invoice, SomeDrafts.DAY, Map.of(1, Money.of(net, "CAD")), WHY))
                .toList();
    }

    private String taxes(UUID invoice) {
        return business.one("""
                select string_agg(t.code || ' ' || t.amount_minor, ', ' order by s.number, t.position)
                  from invoice_issue s join invoice_tax t on t.invoice_id = s.invoice_id
                 where s.credits_id = '%s'""".formatted(invoice));
    }
}
