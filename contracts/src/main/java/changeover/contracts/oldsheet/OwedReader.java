package changeover.contracts.oldsheet;

import changeover.contracts.calendar.DayInWords;
import changeover.contracts.money.Money;
import changeover.contracts.words.Refusal;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What the customer of one row still owes from before, taxes included. */
final class OwedReader {

    private static final int LONGEST = 200;

    private final Cells cells;
    private final DayReader days;
    private final LocalDate takeOver;
    private final Currency currency;

    OwedReader(Cells cells, DayReader days, LocalDate takeOver, Currency currency) {
        this.cells = cells;
        this.days = days;
        this.takeOver = takeOver;
        this.currency = currency;
    }

    /** Null where nothing is owed. */
    OldHome.@Nullable Owed read() {
        String said = cells.text(SheetField.OWED);
        if (WrittenWords.isNo(said)) {
            return null;
        }
        Optional<BigDecimal> amount = WrittenPrice.read(said);
        if (amount.isEmpty()) {
            cells.fault(SheetField.OWED, Refusal.of("oldsheet.amount", Map.of("word", PeopleReader.shortened(said))));
            return null;
        }
        LocalDate since = days.whole(SheetField.OWED_SINCE);
        if (since != null && since.isAfter(takeOver)) {
            cells.fault(
                    SheetField.OWED_SINCE, Refusal.of("oldsheet.owed-to-come", Map.of("day", DayInWords.of(since))));
        }
        Money owed = Money.rounded(amount.get(), currency);
        String words = cells.title(SheetField.OWED) + ": " + said;
        return owed.isZero()
                ? null
                : new OldHome.Owed(
                        owed,
                        since == null ? takeOver : since,
                        words.length() <= LONGEST ? words : words.substring(0, LONGEST));
    }
}
