package changeover.billing.invoices;

import static org.junit.jupiter.api.Assertions.assertThrows;

import changeover.billing.ABusiness;
import changeover.billing.payments.InvoiceLists;
import changeover.billing.payments.Owed;
import changeover.billing.payments.Payments;
import changeover.billing.pricing.Prices;
import changeover.contracts.agreements.AgreementSold;
import changeover.contracts.words.FilledOn;
import changeover.contracts.words.Refused;
import changeover.scheduling.closeout.VisitAmended;
import changeover.scheduling.closeout.VisitClosed;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.function.Executable;

/** What the tests of discarded drafts share. */
class DiscardsTold {

    static final LocalDate DAY = LocalDate.of(2026, 4, 1);

    @Inject
    ABusiness business;

    @Inject
    AnAgreement agreement;

    @Inject
    Event<AgreementSold> sold;

    @Inject
    Event<VisitClosed> closed;

    @Inject
    Event<VisitAmended> amended;

    @Inject
    Drafts drafts;

    @Inject
    Discards discards;

    @Inject
    DraftsByHand hands;

    @Inject
    Invoices invoices;

    @Inject
    InvoiceLists lists;

    @Inject
    Payments payments;

    @Inject
    Owed owed;

    @Inject
    Credits credits;

    @Inject
    Prices prices;

    void discard(UUID draft) {
        discards.discard(draft, new FilledOn(hands.of(draft).orElseThrow().version()), DAY, "Not wanted");
    }

    static String refused(Executable deed) {
        return assertThrows(Refused.class, deed).first().code();
    }

    static VisitClosed closed(UUID visit, UUID home, UUID plan, int minutes) {
        return new VisitClosed(
                visit,
                home,
                plan,
                plan == null ? "call" : "plan",
                null,
                UUID.randomUUID(),
                DAY.plusDays(20),
                minutes,
                minutes,
                0,
                List.of(),
                List.of());
    }

    String waiting() {
        String said = business.one("""
                select string_agg(kind || ' ' || subtotal_minor, ', ' order by kind) from invoice i
                 where not exists (select 1 from invoice_issue s where s.invoice_id = i.id)
                   and not exists (select 1 from invoice_discard x where x.invoice_id = i.id)""");
        return said == null ? "none" : said;
    }
}
