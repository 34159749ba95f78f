package changeover.billing.ledger;

import changeover.billing.ABusiness;
import changeover.billing.invoices.Credits;
import changeover.billing.invoices.Drafts;
import changeover.billing.invoices.Invoices;
import changeover.billing.invoices.SomeDrafts;
import changeover.contracts.money.Money;
import changeover.contracts.words.Refused;
import changeover.contracts.words.Wording;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;

/** Plans that are sold, asked for, kept by visits, credited, ended and settled, each into the books kept by hand. */
@ApplicationScoped
class RandomPlans {

    private static final Wording WHY = new Wording("Goodwill.", "Geste.");

    @Inject
    ABusiness business;

    @Inject
    ASoldPlan plans;

    @Inject
    Drafts drafts;

    @Inject
    Invoices invoices;

    @Inject
    Credits credits;

    @Inject
    Settlements settlements;

    /** @param place of the customer's home */
    record Case(UUID customer, UUID home, String place, LocalDate day) {}

    /** The next thing that may happen to a plan of the customer's; a new one is sold while none is alive. */
    void next(Random random, Case now, BooksByHand books, List<PlanByHand> all) {
        List<PlanByHand> theirs = all.stream()
                .filter(one -> one.sold.customer().equals(now.customer()))
                .toList();
        if (theirs.isEmpty() || random.nextInt(4) == 0 && theirs.getLast().settled()) {
            all.add(sell(random, now, books));
            return;
        }
        PlanByHand plan = theirs.get(random.nextInt(theirs.size()));
        switch (random.nextInt(6)) {
            case 0, 1 -> issue(plan, now, books);
            case 2 -> close(plan, now.day());
            case 3 -> credit(random, plan, now.day(), books);
            case 4 -> end(plan, now.day());
            default -> settle(random, plan, now.day(), books);
        }
    }

    private PlanByHand sell(Random random, Case now, BooksByHand books) {
        ASoldPlan.Sold sold = plans.of(now.customer(), now.home(), now.day(), 0, 0);
        List<UUID> visits = List.of(
                plans.visit(sold, "plan", 60, null, now.day()),
                plans.visit(sold, "plan", 60, null, now.day().plusDays(180)));
        PlanByHand plan = new PlanByHand(sold, now.day(), visits);
        int instalments = 1 + random.nextInt(4);
        for (int at = 1; at <= instalments; at++) {
            long cents = 1 + random.nextInt(20_000);
            String net = Money.ofMinor(cents, "CAD").decimal();
            plan.drafted(
                    drafts.write(List.of(
                                    SomeDrafts.instalment(now.day(), now.customer(), now.home(), sold.id(), at, net)))
                            .getFirst(),
                    cents);
        }
        issue(plan, now, books);
        return plan;
    }

    private void issue(PlanByHand plan, Case now, BooksByHand books) {
        if (!plan.waiting.isEmpty()) {
            UUID id = plan.waiting.getFirst().id();
            invoices.issue(id, now.day());
            books.invoiced(id, new BooksByHand.Paper(now.customer(), now.place(), plan.issued(now.day())));
        }
    }

    private void close(PlanByHand plan, LocalDate day) {
        if (plan.ended == null && plan.done.size() < plan.visits.size()) {
            plans.closed(plan.sold, plan.visits.get(plan.done.size()), day, "done");
            plan.done.add(day);
        }
    }

    /** A part of one invoice of the plan, whatever its standing. */
    private void credit(Random random, PlanByHand plan, LocalDate day, BooksByHand books) {
        UUID id = plan.papers.get(random.nextInt(plan.papers.size()));
        long left = books.papers.get(id).charged[0];
        if (left > 0) {
            long back = 1 + random.nextLong(left);
            back(id, day, back, books);
            plan.credited(day, back);
        }
    }

    private void back(UUID invoice, LocalDate day, long cents, BooksByHand books) {
        invoices.issue(credits.inPart(invoice, day, Map.of(1, Money.ofMinor(cents, "CAD")), WHY), day);
        books.credited(invoice, 0, cents);
    }

    private void end(PlanByHand plan, LocalDate day) {
        if (plan.ended == null) {
            plans.ends(plan.sold, day);
            plan.ended = day;
        }
    }

    /** What was billed last goes back first. */
    private void settle(Random random, PlanByHand plan, LocalDate day, BooksByHand books) {
        if (plan.ended == null) {
            return;
        }
        RefundWay way = RefundWay.values()[random.nextInt(RefundWay.values().length)];
        List<UUID> notes = new ArrayList<>();
        try {
            notes.addAll(settlements.settle(plan.sold.id(), way, day, "Moved away"));
        } catch (Refused asBefore) {
            return;
        }
        notes.forEach(note -> invoices.issue(note, day));
        long left = plan.settle(day, way);
        for (UUID invoice : plan.papers.reversed()) {
            long part = Math.min(left, books.papers.get(invoice).charged[0]);
            if (part > 0) {
                books.credited(invoice, 0, part);
                plan.credited(day, part);
                left -= part;
            }
        }
    }
}
