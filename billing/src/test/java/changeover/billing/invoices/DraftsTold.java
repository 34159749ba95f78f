package changeover.billing.invoices;

import static org.junit.jupiter.api.Assertions.assertThrows;

import changeover.billing.ABusiness;
import changeover.billing.pricing.ItemKind;
import changeover.billing.pricing.PriceBook;
import changeover.billing.pricing.PriceEntry;
import changeover.billing.pricing.Prices;
import changeover.billing.tax.ContractForm;
import changeover.billing.tax.Work;
import changeover.contracts.money.Money;
import changeover.contracts.words.FilledOn;
import changeover.contracts.words.Refused;
import changeover.scheduling.closeout.VisitAmended;
import changeover.scheduling.closeout.VisitClosed;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.function.Executable;

/** What the tests of drafts changed by hand share. */
class DraftsTold {

    static final LocalDate DAY = LocalDate.of(2026, 4, 1);

    @Inject
    ABusiness business;

    @Inject
    AnAgreement agreement;

    @Inject
    Event<VisitClosed> closed;

    @Inject
    Event<VisitAmended> amended;

    @Inject
    Drafts drafts;

    @Inject
    DraftsByHand hands;

    @Inject
    Invoices invoices;

    @Inject
    Credits credits;

    @Inject
    Prices prices;

    @Inject
    Repricing repricing;

    static DraftChange.Kept as(int position) {
        return new DraftChange.Kept(position, null, null, null, "price" + position);
    }

    static DraftChange.Kept as(int position, String words, String quantity, String price) {
        return new DraftChange.Kept(
                position, words, new BigDecimal(quantity), price == null ? null : cad(price), "price" + position);
    }

    static DraftChange.Added own(String words, String quantity, String price) {
        return new DraftChange.Added(
                words, new BigDecimal(quantity), "HUR", cad(price), Work.REPAIR, ContractForm.SEPARATE);
    }

    static Money cad(String amount) {
        return Money.of(amount, "CAD");
    }

    void change(UUID draft, List<DraftChange.Kept> kept, DraftChange.Added... added) {
        hands.change(draft, now(draft), new DraftChange(kept, List.of(added), null));
    }

    FilledOn now(UUID draft) {
        return new FilledOn(hands.of(draft).orElseThrow().version());
    }

    static String refused(Executable deed) {
        return assertThrows(Refused.class, deed).first().code();
    }

    String lines(UUID draft) {
        return business.one("""
                select string_agg(position || ' ' || words_fr || ' ' || trim_scale(quantity) || ' ' || net_minor
                         || case when by_hand then ' hand' else '' end
                         || case when visit_changed then ' changed' else '' end, ', ' order by position)
                  from invoice_line where invoice_id = '%s'""".formatted(draft));
    }

    static VisitClosed closed(UUID visit, UUID home, int minutes, VisitClosed.Part... parts) {
        return new VisitClosed(
                visit,
                home,
                null,
                "call",
                null,
                UUID.randomUUID(),
                DAY.plusDays(20),
                minutes,
                minutes,
                0,
                Arrays.asList(parts),
                List.of());
    }

    static VisitClosed.Part filter(int quantity) {
        return new VisitClosed.Part(UUID.randomUUID(), "filter-16x25x1", BigDecimal.valueOf(quantity), null, "extra");
    }

    void priced() {
        agreement.part("filter-16x25x1", "filter");
        prices.set(new PriceEntry(ItemKind.LABOUR, PriceBook.HOUR, cad("96.00"), null, DAY));
        prices.set(new PriceEntry(ItemKind.PART, "filter-16x25x1", cad("18.50"), null, DAY));
    }

    UUID plan(String... amounts) {
        UUID customer = business.customer("Ida Roe");
        return drafts.write(List.of(SomeDrafts.plan(customer, business.home(customer, "QC"), amounts)))
                .getFirst();
    }
}
