package changeover.billing.payments;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.billing.ABusiness;
import changeover.billing.invoices.Drafts;
import changeover.billing.invoices.Invoices;
import changeover.billing.invoices.SomeDrafts;
import changeover.contracts.PostgresForTests;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Today;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Money may come before the document: it is shown what it can pay, and pays it when it is issued. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class DraftsToPayTest {

    @Inject
    ABusiness business;

    @Inject
    Drafts drafts;

    @Inject
    Invoices invoices;

    @Inject
    Payments payments;

    @Inject
    Owed owed;

    @Inject
    LateOfHomes late;

    @Inject
    DraftsToPay toPay;

    @Inject
    Today today;

    private String said(UUID customer) {
        return toPay.of(customer, today.day()).stream()
                .map(one -> one.left().decimal())
                .collect(Collectors.joining(" "));
    }

    @Test
    void what_was_drafted_is_paid_before_it_is_issued_and_once() {
        business.in(business.quebec(), () -> {
            UUID ida = business.customer("Ida Roe");
            UUID home = business.home(ida, "QC");
            LocalDate day = today.day();
            List<UUID> written = drafts.write(List.of(
                    SomeDrafts.on(day, ida, home, "249.00"), SomeDrafts.on(day.plusDays(40), ida, home, "100.00")));
            assertEquals("286.29 114.98", said(ida), "the later one with the taxes of its own day");
            pay(ida, written.getFirst(), "200.00");
            assertEquals("86.29 114.98", said(ida));
            pay(ida, written.getFirst(), "86.29");
            assertEquals("114.98", said(ida));
            invoices.issue(written.getFirst(), day);
            assertEquals("0.00", owed.of(ida, day).open().decimal());
            assertEquals("", said(business.customer("Jo Poe")));
        });
    }

    private void pay(UUID customer, UUID draft, String amount) {
        Money money = Money.of(amount, "CAD");
        payments.take(new NewPayment(
                customer, today.day(), Way.CARD, money, null, null, List.of(new NewPayment.Part(draft, money))));
    }

    /** As a visit's invoice finds its payer: who pays, else who signs or lives there. */
    @Test
    void a_home_without_a_payer_of_its_own_is_paid_by_who_lives_there() {
        business.in(business.quebec(), () -> {
            UUID ida = business.customer("Ida Roe");
            UUID jo = business.customer("Jo Poe");
            UUID home = business.home(ida, "QC");
            LocalDate day = today.day();
            business.execute("delete from home_part where home_id = '" + home + "'");
            part(home, ida, "lives");
            assertEquals(List.of(ida), payers(home, day));
            part(home, jo, "pays");
            assertEquals(List.of(jo), payers(home, day));
        });
    }

    private void part(UUID home, UUID customer, String part) {
        business.execute("insert into home_part (home_id, customer_id, part, from_day) values ('" + home + "', '"
                + customer + "', '" + part + "', '2020-01-01')");
    }

    private List<UUID> payers(UUID home, LocalDate day) {
        return late.payers(List.of(home), day).stream()
                .map(LateOfHomes.Payer::customerId)
                .toList();
    }
}
