package changeover.billing.ledger;

import changeover.billing.ABusiness;
import changeover.billing.invoices.Credits;
import changeover.billing.invoices.Drafts;
import changeover.billing.invoices.Invoices;
import changeover.billing.invoices.SomeDrafts;
import changeover.billing.payments.NewPayment;
import changeover.billing.payments.NewRefund;
import changeover.billing.payments.OpenItem;
import changeover.billing.payments.Owed;
import changeover.billing.payments.Payments;
import changeover.billing.payments.Refunds;
import changeover.billing.payments.Undoing;
import changeover.billing.payments.Way;
import changeover.contracts.money.Money;
import changeover.contracts.words.Refused;
import changeover.contracts.words.Wording;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.UUID;

/** A seeded year: invoices in three provinces, credits in part, payments whole and in part, too much, sent back, given back. */
@ApplicationScoped
class AYearOfMoney {

    static final LocalDate FIRST = LocalDate.of(2025, 1, 1);
    private static final List<String> PLACES = List.of("QC", "QC", "NS", "NB");
    private static final List<Way> WAYS = List.of(Way.CARD, Way.CHEQUE, Way.TRANSFER, Way.CASH, Way.DEBIT);

    @Inject
    ABusiness business;

    @Inject
    Drafts drafts;

    @Inject
    Invoices invoices;

    @Inject
    Credits credits;

    @Inject
    Payments payments;

    @Inject
    Refunds refunds;

    @Inject
    Owed owed;

    /** Inside the business: what happened, day by day. */
    void goesBy(long seed) {
        business.confirms("CA-NB hst 2016-07-01 any any any");
        Random random = new Random(seed);
        List<UUID> customers = new ArrayList<>();
        Map<UUID, UUID> homes = new HashMap<>();
        for (String place : PLACES) {
            UUID customer = business.customer("Ida Roe " + customers.size());
            customers.add(customer);
            homes.put(customer, business.home(customer, place));
        }
        List<UUID> issued = new ArrayList<>();
        List<UUID> paid = new ArrayList<>();
        for (LocalDate day = FIRST; day.isBefore(FIRST.plusYears(1)); day = day.plusDays(1 + random.nextInt(3))) {
            UUID customer = customers.get(random.nextInt(customers.size()));
            switch (random.nextInt(6)) {
                case 0, 1 -> {
                    String[] nets = random.nextBoolean()
                            ? new String[] {cents(random, 40_000)}
                            : new String[] {cents(random, 9_000), cents(random, 30_000)};
                    UUID draft = drafts.write(List.of(SomeDrafts.on(day, customer, homes.get(customer), nets)))
                            .getFirst();
                    invoices.issue(draft, day);
                    issued.add(draft);
                }
                case 2 -> credit(random, day, issued);
                case 3, 4 -> pay(random, day, customer, paid);
                default -> otherwise(random, day, customer, paid);
            }
        }
    }

    /** Every customer's credit pays what is open. */
    void settleAll(LocalDate day) {
        owed.byCustomer(day).forEach(one -> payments.settle(Objects.requireNonNull(one.customerId()), day));
    }

    private void credit(Random random, LocalDate day, List<UUID> issued) {
        if (issued.isEmpty()) {
            return;
        }
        UUID invoice = issued.get(random.nextInt(issued.size()));
        Wording why = new Wording("Goodwill.", "Geste.");
        try {
            UUID note = random.nextInt(3) == 0
                    ? credits.inFull(invoice, day, why)
                    : credits.inPart(invoice, day, Map.of(1, Money.of(cents(random, 4_000), "CAD")), why);
            invoices.issue(note, day);
        } catch (Refused moreThanCharged) {
            issued.remove(invoice);
        }
    }

    private void pay(Random random, LocalDate day, UUID customer, List<UUID> paid) {
        List<OpenItem> open = owed.open(customer, day);
        if (open.isEmpty()) {
            return;
        }
        OpenItem item = open.getFirst();
        String amount = switch (random.nextInt(3)) {
            case 0 -> item.open().decimal();
            case 1 -> cents(random, 5_000);
            default -> item.open().plus(Money.of("3.33", "CAD")).decimal();
        };
        Way way = WAYS.get(random.nextInt(WAYS.size()));
        paid.add(payments.take(
                new NewPayment(customer, day, way, Money.of(amount, "CAD"), null, null, List.<NewPayment.Part>of())));
    }

    private void otherwise(Random random, LocalDate day, UUID customer, List<UUID> paid) {
        Money credit = owed.of(customer, day).credit();
        if (random.nextInt(3) == 0 && !paid.isEmpty()) {
            payments.undo(paid.removeLast(), Undoing.How.BOUNCED, day, "No funds");
        } else if (random.nextBoolean()) {
            payments.settle(customer, day);
        } else if (credit.isPositive()) {
            refunds.give(new NewRefund(customer, day, Way.CARD, credit, null, null));
        }
    }

    private static String cents(Random random, int most) {
        return Money.ofMinor(1 + random.nextInt(most), "CAD").decimal();
    }
}
