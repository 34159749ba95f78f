package changeover.billing.pricing;

import changeover.contracts.money.Money;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A new version of the book, prepared ahead: every price that a person wrote, as it stands the day before, so many percent
 * more and rounded half-up to the step. What a mark-up makes of a cost follows its cost; a price that stays is not written.
 *
 * @param percent by kind of item; a kind that is missing stays
 */
public record NextPrices(LocalDate day, Map<ItemKind, BigDecimal> percent, Money step) {

    /**
     * @param replaced what that day had already, and loses
     */
    public record Change(
            ItemKind kind,
            String code,
            Money before,
            Money after,
            @Nullable Money cost,
            @Nullable Money replaced) {

        /** What it changes: the difference, below nought for a price that falls. */
        public Money difference() {
            return after.minus(before);
        }

        PriceRow row(LocalDate day) {
            return new PriceRow(kind, code, null, after, cost, day);
        }
    }

    public List<Change> of(PriceBook book) {
        return book.asOf(day.minusDays(1)).stream()
                .filter(entry -> entry.by() == null)
                .flatMap(entry -> change(entry, ofTheDay(book, entry)).stream())
                .toList();
    }

    /** The same as rows to be written. */
    public List<PriceRow> rows(PriceBook book) {
        return of(book).stream().map(change -> change.row(day)).toList();
    }

    private Optional<Change> change(PriceEntry entry, @Nullable Money replaced) {
        BigDecimal rise = percent.getOrDefault(entry.kind(), BigDecimal.ZERO);
        if (rise.signum() == 0) {
            return Optional.empty();
        }
        BigDecimal raised =
                entry.price().amount().multiply(rise.movePointLeft(2).add(BigDecimal.ONE));
        Money after = MarkUp.rounded(raised, step);
        return after.equals(replaced == null ? entry.price() : replaced)
                ? Optional.empty()
                : Optional.of(new Change(entry.kind(), entry.code(), entry.price(), after, entry.cost(), replaced));
    }

    private @Nullable Money ofTheDay(PriceBook book, PriceEntry entry) {
        return book.on(entry.kind(), entry.code(), day)
                .filter(one -> one.from().equals(day))
                .map(PriceEntry::price)
                .orElse(null);
    }
}
