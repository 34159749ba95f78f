package changeover.contracts.oldsheet;

import changeover.contracts.money.Money;
import changeover.contracts.words.Folded;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One line of an old spreadsheet, understood.
 *
 * @param row as a spreadsheet counts
 * @param toBeRead whether a machine, or all of them, is left to the first visit
 * @param agreement null where none is in force
 * @param owed null where nothing is owed from before
 */
public record OldHome(
        int row,
        Who who,
        Where where,
        List<Unit> units,
        boolean toBeRead,
        @Nullable Deal agreement,
        @Nullable Owed owed) {

    public OldHome {
        units = List.copyOf(units);
    }

    /** @param key what the customer is known by, in this file and in the next */
    public record Who(
            String key,
            String name,
            String language,
            @Nullable String phone,
            @Nullable String email,
            @Nullable String note) {}

    /** @param key what the home is known by, in this file and in the next */
    public record Where(
            String key,
            String street,
            @Nullable String unitLabel,
            String city,
            String region,
            @Nullable String postal,
            String country) {}

    /** @param kind a code of the catalogue */
    public record Unit(
            String kind,
            @Nullable String make,
            @Nullable String model,
            @Nullable String serial,
            @Nullable LocalDate installed) {}

    /**
     * An agreement that runs.
     *
     * @param plan its code
     * @param price of the term, before taxes
     * @param paid before taxes; null when nobody knows
     * @param visitsDone in the term so far; null when nobody knows
     */
    public record Deal(
            String plan,
            LocalDate from,
            Money price,
            @Nullable Money paid,
            @Nullable Integer visitsDone,
            @Nullable LocalDate lastVisit) {}

    /**
     * What the customer owes from before.
     *
     * @param words as the file says it
     */
    public record Owed(Money amount, LocalDate since, String words) {}

    /** Whether another line says the same, whatever its number and its capitals. */
    boolean saysTheSame(OldHome other) {
        return plainly().equals(other.plainly());
    }

    private String plainly() {
        return Folded.of(new OldHome(0, who, where, units, toBeRead, agreement, owed).toString());
    }
}
