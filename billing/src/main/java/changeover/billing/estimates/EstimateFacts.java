package changeover.billing.estimates;

import changeover.billing.invoices.Most;
import changeover.billing.tax.ContractForm;
import changeover.billing.tax.Work;
import changeover.contracts.money.Money;
import changeover.contracts.words.Refusal;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What a repair is thought to need.
 *
 * @param words what will be done, as the customer reads it
 * @param minutes of labour, counted like those of a closed visit
 * @param trip whether the trip is asked too, where the price book has a fee for it
 * @param validUntil its last day, in
 * @param deposit asked before the work; null for none
 * @param work what its parts, minutes and trip are: with the form it decides the taxes
 * @param form parts and labour stated apart, or one sum for everything
 */
public record EstimateFacts(
        String words,
        int minutes,
        boolean trip,
        List<PartItem> parts,
        List<OtherItem> others,
        LocalDate validUntil,
        @Nullable Money deposit,
        Work work,
        ContractForm form) {

    /** A repair, parts and labour stated apart. */
    public EstimateFacts(
            String words,
            int minutes,
            boolean trip,
            List<PartItem> parts,
            List<OtherItem> others,
            LocalDate validUntil,
            @Nullable Money deposit) {
        this(words, minutes, trip, parts, others, validUntil, deposit, Work.REPAIR, ContractForm.SEPARATE);
    }

    /** A part of the price book; the day's price is asked. */
    public record PartItem(String code, BigDecimal quantity) {}

    /** A line in somebody's own words at their own price before taxes. */
    public record OtherItem(String words, BigDecimal quantity, String unit, Money unitPrice, Work work) {}

    public EstimateFacts {
        parts = List.copyOf(parts);
        others = List.copyOf(others);
    }

    /**
     * Everything that is wrong with it; empty when it may be kept.
     *
     * @param known the codes of the parts that the business carries
     */
    List<Refusal> refusals(LocalDate today, Set<String> known) {
        List<Refusal> wrong = new ArrayList<>();
        if (words.isBlank()) {
            wrong.add(Refusal.of("text.missing").at("words"));
        }
        if (minutes == 0 && parts.isEmpty() && others.isEmpty()) {
            wrong.add(Refusal.of("estimate.nothing").at("minutes"));
        }
        if (validUntil.isBefore(today)) {
            wrong.add(Refusal.of("estimate.valid-in-the-past").at("validUntil"));
        }
        if (deposit != null && !deposit.isPositive()) {
            wrong.add(Refusal.of("payment.nothing").at("deposit"));
        }
        for (int at = 0; at < parts.size(); at++) {
            if (!known.contains(parts.get(at).code())) {
                wrong.add(Refusal.of("estimate.no-such-part").at("part-" + at + "-code"));
            }
        }
        for (int at = 0; at < others.size(); at++) {
            OtherItem one = others.get(at);
            if (Most.beyond(one.unitPrice().times(one.quantity()))) {
                wrong.add(Refusal.of("invoice.line-too-much").at("other-" + at + "-price"));
            }
        }
        return wrong;
    }
}
