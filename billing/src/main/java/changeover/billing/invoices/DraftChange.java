package changeover.billing.invoices;

import changeover.billing.tax.ContractForm;
import changeover.billing.tax.Work;
import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A draft as a person wants it. The lines that they keep are named, the others are taken off; what is null stays as it is.
 *
 * @param terms null to leave them
 */
public record DraftChange(
        List<Kept> kept, List<Added> added, @Nullable Terms terms) {

    /** The least and the most that a line may count of its unit. */
    public static final BigDecimal LEAST = new BigDecimal("0.0001");

    public static final BigDecimal MOST = BigDecimal.valueOf(99_999);

    /**
     * @param words in the language of the document
     * @param french the same in French where the document is in another language; null with other words: these stand for it
     * @param quantity above nought, at most four decimals
     * @param unitPrice for one unit, before tax; never for what the plan includes
     * @param at the field of its price, for what is said about it
     * @param work, form decide the taxes, with the place
     */
    public record Kept(
            int position,
            @Nullable String words,
            @Nullable BigDecimal quantity,
            @Nullable Money unitPrice,
            String at,
            @Nullable Work work,
            @Nullable ContractForm form,
            @Nullable String french) {

        public Kept(
                int position,
                @Nullable String words,
                @Nullable BigDecimal quantity,
                @Nullable Money unitPrice,
                String at,
                @Nullable Work work,
                @Nullable ContractForm form) {
            this(position, words, quantity, unitPrice, at, work, form, null);
        }

        /** What it is and how its price was agreed stay as they are. */
        public Kept(
                int position,
                @Nullable String words,
                @Nullable BigDecimal quantity,
                @Nullable Money unitPrice,
                String at) {
            this(position, words, quantity, unitPrice, at, null, null);
        }
    }

    /**
     * A line of a person's own, charged and taxed like any other work at the place.
     *
     * @param unit UN/ECE Recommendation 20, one of {@link DraftsByHand#UNITS}
     * @param work, form decide the taxes, with the place
     * @param french the same words in French; null where those stand for it
     * @param at the field of its price, for what is said about it
     */
    public record Added(
            String words,
            BigDecimal quantity,
            String unit,
            Money unitPrice,
            Work work,
            ContractForm form,
            @Nullable String french,
            String at) {

        public Added(String words, BigDecimal quantity, String unit, Money unitPrice, Work work, ContractForm form) {
            this(words, quantity, unit, unitPrice, work, form, null, "price");
        }

        Wording wording() {
            return new Wording(words, french == null ? words : french);
        }
    }

    /** @param mayIssueFrom of a plan's document never earlier than it stands: the law may have set that day */
    public record Terms(LocalDate mayIssueFrom, @Nullable String purchaseOrder, int dueDays) {}
}
