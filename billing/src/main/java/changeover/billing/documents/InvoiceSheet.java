package changeover.billing.documents;

import changeover.contracts.money.Money;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Everything that stands on an invoice, a credit note or an estimate, as it was frozen; the paper works nothing out.
 *
 * @param label the number as people say it, F-2026-0391
 * @param corrects what a credit note gives back, "F-2026-0391 of 29 May 2026" in the paper's language
 * @param must what the law of the place asks to be printed for a total like this one
 * @param lines amounts before tax, in the order of the work
 * @param taxes one line each, never added up; none for a small supplier
 * @param paid what was paid before the paper was made; printed with what is left, null when nothing was
 * @param notes blocks under the table: how to pay, what the agreement included
 */
public record InvoiceSheet(
        Locale language,
        Kind kind,
        Letterhead from,
        String label,
        LocalDate day,
        @Nullable LocalDate dueDay,
        @Nullable String corrects,
        Party buyer,
        @Nullable Party work,
        @Nullable String purchaseOrder,
        Must must,
        List<Line> lines,
        Money subtotal,
        List<TaxLine> taxes,
        Money total,
        @Nullable Money paid,
        List<Note> notes,
        @Nullable Stamped stamped) {

    public InvoiceSheet {
        lines = List.copyOf(lines);
        taxes = List.copyOf(taxes);
        notes = List.copyOf(notes);
    }

    public enum Kind {
        INVOICE,
        DEPOSIT,
        CREDIT_NOTE,
        ESTIMATE
    }

    /**
     * A person and a place, or the work and its place.
     *
     * @param more what follows the address: the day of the work, who did it, the agreement
     */
    public record Party(@Nullable String name, List<String> address, List<String> more) {
        public Party {
            address = List.copyOf(address);
            more = List.copyOf(more);
        }
    }

    /**
     * What must be printed (Input Tax Credit Information Regulations, SOR/91-45 s. 3: under $100, to under $500, $500 and
     * more); the numbers, the buyer and the terms are printed anyhow when they are known.
     *
     * @param taxByLine whether each line says if it bears tax, because some do and some don't
     */
    public record Must(boolean taxByLine, boolean buyer, boolean terms) {
        public static Must everything() {
            return new Must(false, true, true);
        }

        /** What a total, taxes in, asks for; the sums are in the document's own currency. */
        public static Must forTotal(Money total, boolean taxesDiffer) {
            BigDecimal sum = total.amount().abs();
            boolean buyer = sum.compareTo(BigDecimal.valueOf(500)) >= 0;
            return new Must(taxesDiffer, buyer, buyer);
        }
    }

    /**
     * One line of work, part or plan.
     *
     * @param unit UN/ECE Recommendation 20: HUR, MIN, C62, E48 …
     * @param why included, outside the agreement, discounted: the sentence under the line
     * @param included whether the agreement already pays it
     */
    public record Line(
            BigDecimal quantity,
            String unit,
            String what,
            @Nullable String why,
            @Nullable Money unitPrice,
            @Nullable Money discount,
            boolean included,
            Money amount,
            boolean taxed) {}

    /**
     * One tax of the whole paper.
     *
     * @param name TPS/GST; it may say its percent itself, which is then null
     * @param number the business's own number for it
     */
    public record TaxLine(
            String name,
            @Nullable BigDecimal percent,
            @Nullable String number,
            Money amount) {}

    /** A caption and a few lines under the table. */
    public record Note(String caption, String text) {}

    /** A thing that happened, on its day: PAID. */
    public record Stamped(String word, LocalDate day) {}
}
