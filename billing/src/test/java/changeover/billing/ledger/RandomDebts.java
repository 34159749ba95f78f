package changeover.billing.ledger;

import changeover.billing.ABusiness;
import changeover.billing.payments.Deposit;
import changeover.billing.payments.Deposits;
import changeover.billing.payments.NewDeposit;
import changeover.billing.payments.OpenItem;
import changeover.billing.payments.Owed;
import changeover.billing.payments.Way;
import changeover.billing.writeoffs.WriteOff;
import changeover.billing.writeoffs.WriteOffs;
import changeover.contracts.money.Money;
import changeover.contracts.words.Refused;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.UUID;

/** Debts given up and deposits kept, some of them noted days late, each into the books kept by hand. */
@ApplicationScoped
class RandomDebts {

    /** What a late note may be refused for: since its day the money went elsewhere. */
    private static final Set<String> ELSEWHERE =
            Set.of("deposit.beyond-left", "deposit.before-its-day", "payment.nothing", "payment.not-theirs");

    @Inject
    ABusiness business;

    @Inject
    WriteOffs writeOffs;

    @Inject
    Deposits deposits;

    @Inject
    Owed owed;

    /**
     * Whom an event meets, and when.
     *
     * @param paid payments that the bank may still send back; a deposit is one
     */
    record Case(UUID customer, UUID home, LocalDate day, List<UUID> paid) {}

    void next(Random random, Case met, BooksByHand books) {
        switch (random.nextInt(6)) {
            case 0, 1 -> giveUp(random, met);
            case 2 -> openAgain(random, met);
            case 3 -> keep(random, met, books);
            case 4 -> apply(random, met);
            default -> giveBack(random, met, books);
        }
    }

    /** What of the customer's debts stands given up. */
    long givenUp(UUID customer) {
        return Long.parseLong(business.one("""
                select coalesce(sum(w.amount_minor), 0) from write_off w join invoice_issue s on s.invoice_id = w.invoice_id
                 where s.customer_id = '%s'""".formatted(customer)));
    }

    private void giveUp(Random random, Case met) {
        List<OpenItem> open = owed.open(met.customer(), met.day());
        if (!open.isEmpty()) {
            OpenItem one = open.get(random.nextInt(open.size()));
            long cents = random.nextBoolean()
                    ? one.open().minor()
                    : 1 + random.nextLong(one.open().minor());
            writeOffs.giveUp(one.invoiceId(), met.day(), Money.ofMinor(cents, "CAD"), "Moved away");
        }
    }

    private void openAgain(Random random, Case met) {
        List<WriteOff> standing = owed.open(met.customer(), met.day()).stream()
                .flatMap(item -> writeOffs.ofInvoice(item.invoiceId()).stream())
                .filter(one -> one.left().isPositive())
                .toList();
        if (!standing.isEmpty()) {
            writeOffs.takeBack(standing.get(random.nextInt(standing.size())).id(), met.day(), "They moved back");
        }
    }

    private void keep(Random random, Case met, BooksByHand books) {
        long cents = 1 + random.nextInt(50_000);
        UUID id = deposits.take(new NewDeposit(
                met.customer(),
                met.home(),
                null,
                null,
                RandomEvents.late(random, met.day()),
                Way.CARD,
                Money.ofMinor(cents, "CAD"),
                null,
                "Boiler"));
        UUID payment = deposits.of(id).orElseThrow().paymentId();
        met.paid().add(payment);
        books.paid(payment, met.customer(), cents);
    }

    private void apply(Random random, Case met) {
        Optional<Deposit> kept = kept(met.customer());
        List<OpenItem> open = owed.open(met.customer(), met.day());
        if (kept.isPresent() && !open.isEmpty()) {
            UUID invoice = open.get(random.nextInt(open.size())).invoiceId();
            try {
                deposits.apply(kept.get().id(), invoice, RandomEvents.late(random, met.day()), null);
            } catch (Refused refused) {
                known(refused);
            }
        }
    }

    private void giveBack(Random random, Case met, BooksByHand books) {
        Optional<Deposit> kept = kept(met.customer());
        if (kept.isPresent()) {
            long left = kept.get().left().minor();
            long cents = random.nextBoolean() ? left : 1 + random.nextLong(left);
            try {
                deposits.giveBack(
                        kept.get().id(),
                        RandomEvents.late(random, met.day()),
                        Way.TRANSFER,
                        Money.ofMinor(cents, "CAD"),
                        null);
                books.givenBack(met.customer(), cents);
            } catch (Refused refused) {
                known(refused);
            }
        }
    }

    private Optional<Deposit> kept(UUID customer) {
        return deposits.ofCustomer(customer).stream()
                .filter(one -> one.left().isPositive())
                .findFirst();
    }

    private static void known(Refused refused) {
        if (!ELSEWHERE.contains(refused.first().code())) {
            throw refused;
        }
    }
}
