package changeover.deploy.demo;

import changeover.billing.invoices.DocumentKind;
import changeover.billing.invoices.DraftByHand;
import changeover.billing.invoices.DraftChange;
import changeover.billing.invoices.DraftChange.Added;
import changeover.billing.invoices.DraftChange.Kept;
import changeover.billing.invoices.DraftsByHand;
import changeover.billing.invoices.Invoices;
import changeover.billing.payments.InvoiceFilter;
import changeover.billing.payments.InvoiceLists;
import changeover.billing.payments.InvoiceRow;
import changeover.billing.payments.Standing;
import changeover.billing.tax.ContractForm;
import changeover.billing.tax.Work;
import changeover.contracts.Examples;
import changeover.contracts.money.Money;
import changeover.contracts.words.FilledOn;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

/**
 * Documents are issued every few days until the last weeks: what those brought is still to be billed in one run, with two drafts
 * that somebody should look at first.
 */
@ApplicationScoped
class DemoBilling {

    /** So many days before today something was issued last: a little less than a month, so that some of it is not due yet. */
    static final int LEFT = 26;

    private static final BigDecimal SLIPPED = BigDecimal.TEN;

    @Inject
    InvoiceLists lists;

    @Inject
    Invoices invoices;

    @Inject
    DraftsByHand hand;

    /** Inside the shop, on a day of its year. */
    void issue(LocalDate day, LocalDate today) {
        List<UUID> ready = day.isAfter(today.minusDays(LEFT)) ? List.of() : lists.ready(day);
        if (!ready.isEmpty()) {
            invoices.issue(ready, day);
        }
    }

    /** Inside the shop, on its last day: on one draft somebody mistook the point, on another a part was given no price. */
    void leave(Examples.Shop shop, LocalDate today) {
        boolean french = shop.language().equals("fr");
        List<InvoiceRow> plans = lists
                .rows(InvoiceFilter.standing(Standing.READY).page(0, 100), today)
                .stream()
                .filter(row -> row.kind() == DocumentKind.PLAN && row.homeId() != null)
                .toList();
        if (plans.size() > 1) {
            change(plans.getFirst().id(), SLIPPED, List.of());
            Money nought = Money.zero(plans.getLast().amount().currency());
            change(
                    plans.getLast().id(),
                    BigDecimal.ONE,
                    List.of(new Added(
                            french ? "Poignée de grille" : "Handle of a grille",
                            BigDecimal.ONE,
                            "C62",
                            nought,
                            Work.REPAIR,
                            ContractForm.SEPARATE)));
        }
    }

    private void change(UUID id, BigDecimal times, List<Added> added) {
        DraftByHand draft = hand.of(id).orElseThrow();
        List<Kept> kept = draft.lines().stream()
                .map(line -> new Kept(
                        line.position(),
                        null,
                        null,
                        line.unitPrice() == null ? null : line.unitPrice().times(times),
                        "price"))
                .toList();
        hand.change(id, new FilledOn(draft.version()), new DraftChange(kept, added, null));
    }
}
