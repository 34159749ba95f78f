package changeover.billing.payments;

import changeover.billing.periods.Periods;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Money that comes in is noted once, pays documents, and what is left stays the customer's credit. */
@ApplicationScoped
public class Payments {

    @Inject
    EntityManager session;

    @Inject
    Owed owed;

    @Inject
    StillOpen still;

    @Inject
    Today today;

    @Inject
    Settling settling;

    @Inject
    NamedParts named;

    @Inject
    Periods periods;

    @Inject
    Event<PaymentTaken> taken;

    /**
     * Notes a payment. A part beyond what a document has open pays it in full; the surplus is kept. Cash that is the total
     * rounded to five cents pays the total.
     *
     * @throws changeover.contracts.words.Refused for nothing, a day to come, or a document of somebody else
     */
    public UUID take(NewPayment payment) {
        if (payment.day().isAfter(today.day())) {
            throw Refusal.of("payment.day-to-come").at("day").thrown();
        }
        periods.check(payment.day());
        CustomersTurn.wait(session, payment.customerId());
        Wanted wanted = wanted(payment);
        Money rounding = payment.amount().minus(wanted.counted());
        Payment row = Payment.taken(payment, wanted.counted(), rounding);
        session.persist(row);
        Money left = wanted.counted();
        List<PaymentTaken.Allocated> allocated = new ArrayList<>();
        for (NewPayment.Part part : wanted.parts()) {
            session.persist(Allocation.of(row.id(), part.invoiceId(), part.amount(), payment.day()));
            allocated.add(new PaymentTaken.Allocated(part.invoiceId(), part.amount()));
            left = left.minus(part.amount());
        }
        session.flush();
        taken.fire(new PaymentTaken(
                row.id(), payment.customerId(), payment.day(), wanted.counted(), left, List.copyOf(allocated)));
        return row.id();
    }

    /**
     * As {@link #take}, where each part that is named must fit what is open when the customer's turn comes.
     *
     * @throws changeover.contracts.words.Refused where a part does not fit, and as {@link #take}
     */
    public UUID takeAsNamed(NewPayment payment) {
        CustomersTurn.wait(session, payment.customerId());
        named.check(payment);
        return take(payment);
    }

    private record Wanted(Money counted, List<NewPayment.Part> parts) {}

    private Wanted wanted(NewPayment payment) {
        List<Spread.Owing> owing =
                payment.parts().isEmpty() ? still.orGivenUp(payment.customerId(), payment.day()) : asked(payment);
        Money counted = payment.amount();
        if (payment.way() == Way.CASH) {
            Money sum = Money.zero(counted.currency());
            for (Spread.Owing one : owing) {
                sum = sum.plus(one.open());
                if (CashRounding.of(sum).equals(payment.amount())) {
                    counted = sum;
                    break;
                }
            }
        }
        return new Wanted(counted, Spread.over(counted, owing).parts());
    }

    private List<Spread.Owing> asked(NewPayment payment) {
        Map<UUID, Money> wanted = new LinkedHashMap<>();
        for (NewPayment.Part part : payment.parts()) {
            if (!part.amount().isPositive()) {
                throw Refusal.of("payment.nothing").at("parts").thrown();
            }
            wanted.merge(part.invoiceId(), part.amount(), Money::plus);
        }
        List<Spread.Owing> owing = new ArrayList<>();
        wanted.forEach((invoice, amount) -> {
            Optional<OpenItem> item = owed.item(invoice, today.day());
            UUID owner = item.map(OpenItem::customerId).orElseGet(() -> payerOfDraft(invoice));
            if (!payment.customerId().equals(owner)) {
                throw Refusal.of("payment.not-theirs").at("parts").thrown();
            }
            Money open = item.map(OpenItem::open).orElse(amount);
            owing.add(new Spread.Owing(invoice, open.compareTo(amount) < 0 ? open : amount));
        });
        return owing;
    }

    private @Nullable UUID payerOfDraft(UUID invoice) {
        return (UUID) session.createNativeQuery("select customer_id from invoice where id = :id"
                        + " and kind <> 'credit' and not exists (select 1 from invoice_discard where invoice_id = :id)")
                .setParameter("id", invoice)
                .getResultStream()
                .findFirst()
                .orElse(null);
    }

    /** Uses the customer's credit for what is open, the oldest first, and answers how much of it was used. */
    public Money settle(UUID customer, LocalDate day) {
        periods.check(day);
        CustomersTurn.wait(session, customer);
        return settling.settle(customer, day);
    }

    /** The bank sent it back, or it was a mistake: what it paid is open again. */
    public void undo(UUID id, Undoing.How how, LocalDate day, String why) {
        if (day.isAfter(today.day())) {
            throw Refusal.of("payment.undone-to-come").at("day").thrown();
        }
        periods.check(day);
        Payment payment =
                of(id).orElseThrow(() -> Refusal.of("payment.not-found").thrown());
        CustomersTurn.wait(session, payment.customerId());
        if (undoing(id).isPresent()) {
            throw Refusal.of("payment.undone-already").thrown();
        }
        session.persist(Undoing.of(payment, how, day, why));
        session.flush();
    }

    public Optional<Payment> of(UUID id) {
        return Optional.ofNullable(session.find(Payment.class, id));
    }

    public Optional<Undoing> undoing(UUID payment) {
        return session.createQuery("from Undoing where paymentId = :payment", Undoing.class)
                .setParameter("payment", payment)
                .getResultStream()
                .findFirst();
    }

    /** Newest first. */
    public List<Payment> ofCustomer(UUID customer) {
        return session.createQuery(
                        "from Payment where customerId = :customer order by day desc, id desc", Payment.class)
                .setParameter("customer", customer)
                .getResultList();
    }
}
