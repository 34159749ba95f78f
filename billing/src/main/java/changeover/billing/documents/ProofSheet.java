package changeover.billing.documents;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * What was done in a home, for whoever must believe it: a maker, an insurer, a buyer, a building's board. No price, key or code.
 *
 * @param business name, street, telephone and licence, a line each
 * @param address of the home
 * @param machines those that stand there and those that were taken out
 * @param days the newest first
 */
public record ProofSheet(
        Locale language,
        String name,
        List<String> business,
        LocalDate printedOn,
        String title,
        List<String> address,
        List<Machine> machines,
        List<Day> days) {

    public ProofSheet {
        business = List.copyOf(business);
        address = List.copyOf(address);
        machines = List.copyOf(machines);
        days = List.copyOf(days);
    }

    /** @param facts make, model, serial number, days of installing and taking out, in words */
    public record Machine(String name, String facts) {}

    /**
     * What one person did on one day.
     *
     * @param household whether it was the household itself
     * @param works what was done, a line each
     */
    public record Day(LocalDate day, @Nullable String by, boolean household, List<String> works) {

        public Day {
            works = List.copyOf(works);
        }
    }
}
