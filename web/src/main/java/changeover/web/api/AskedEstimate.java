package changeover.web.api;

import changeover.billing.estimates.EstimateFacts;
import changeover.billing.estimates.EstimateFacts.OtherItem;
import changeover.billing.estimates.EstimateFacts.PartItem;
import changeover.billing.invoices.DraftChange;
import changeover.billing.invoices.DraftsByHand;
import changeover.billing.tax.ContractForm;
import changeover.billing.tax.Work;
import changeover.contracts.money.Money;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Set;

/** What an estimate is to say, read from a document. */
final class AskedEstimate {

    private static final Set<String> FORMS = Set.of(ContractForm.SEPARATE.code(), ContractForm.LUMP_SUM.code());

    private static final int MOST_MINUTES = 14_400;

    private AskedEstimate() {}

    static EstimateFacts read(Asked asked, Currency currency) {
        List<PartItem> parts = new ArrayList<>();
        for (Asked part : asked.each("parts")) {
            parts.add(new PartItem(part.text("code", 100), quantity(part)));
            part.nothingElse();
        }
        List<OtherItem> others = new ArrayList<>();
        for (Asked other : asked.each("others")) {
            String words = other.text("words", 500);
            BigDecimal quantity = quantity(other);
            String unit = other.oneOf("unit", Set.copyOf(DraftsByHand.UNITS));
            Money price = other.money("unitPrice", currency);
            others.add(new OtherItem(words, quantity, unit.isEmpty() ? "C62" : unit, price, work(other)));
            other.nothingElse();
        }
        return new EstimateFacts(
                asked.text("words", 1000),
                asked.wholeOr("minutes", 0, MOST_MINUTES, 0),
                asked.yes("trip"),
                parts,
                others,
                asked.day("validUntil"),
                asked.value("deposit") == null ? null : asked.money("deposit", currency),
                work(asked),
                form(asked));
    }

    private static Work work(Asked asked) {
        String work = asked.value("work") == null ? "" : asked.oneOf("work", DraftsByHand.WORKS);
        return DraftsByHand.WORKS.contains(work) ? Work.of(work) : Work.REPAIR;
    }

    private static ContractForm form(Asked asked) {
        String form = asked.value("form") == null ? "" : asked.oneOf("form", FORMS);
        return FORMS.contains(form) ? ContractForm.of(form) : ContractForm.SEPARATE;
    }

    private static BigDecimal quantity(Asked asked) {
        return asked.decimal("quantity", DraftChange.LEAST, DraftChange.MOST);
    }
}
