package changeover.billing.documents;

import changeover.contracts.money.Money;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Everything that stands on the offer of a plan for one home; nothing on it is worked out here.
 *
 * @param label the offer's number as people say it
 * @param machines what the plan covers
 * @param promises every task, by machine, with how often
 * @param visits when the visits fall, a line each
 * @param notThisYear what can no longer be kept in this term, a sentence each
 * @param included what the price includes beside the visits: parts, minutes, the discount on the rest
 * @param taxes as they would be today; empty for a small supplier
 * @param instalments when how much is asked; one for a single invoice
 * @param terms the clauses and notices of the place, a paragraph each
 */
public record OfferSheet(
        Locale language,
        Letterhead from,
        String label,
        LocalDate offeredOn,
        LocalDate validUntil,
        InvoiceSheet.Party to,
        List<String> home,
        String plan,
        LocalDate termFrom,
        LocalDate termLast,
        List<String> machines,
        List<Promise> promises,
        List<String> visits,
        List<String> notThisYear,
        List<String> included,
        Money price,
        List<InvoiceSheet.TaxLine> taxes,
        Money total,
        List<Instalment> instalments,
        List<String> terms) {

    public OfferSheet {
        home = List.copyOf(home);
        machines = List.copyOf(machines);
        promises = List.copyOf(promises);
        visits = List.copyOf(visits);
        notThisYear = List.copyOf(notThisYear);
        included = List.copyOf(included);
        taxes = List.copyOf(taxes);
        instalments = List.copyOf(instalments);
        terms = List.copyOf(terms);
    }

    /**
     * One promised task.
     *
     * @param machine null for the home as a whole
     * @param often before each cooling season; twice a year
     * @param byYou whether the household does it itself
     */
    public record Promise(@Nullable String machine, String task, String often, boolean byYou) {}

    /** @param when a day in words, or "after the first visit" */
    public record Instalment(String when, Money amount) {}
}
