package changeover.contracts.oldsheet;

import changeover.contracts.calendar.DayInWords;
import changeover.contracts.calendar.Term;
import changeover.contracts.money.Money;
import changeover.contracts.plans.PlanFacts;
import changeover.contracts.words.Refusal;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The agreement of one row, of twelve months from its first day; one that is over by the day of the take-over is left out. */
final class DealReader {

    private final Cells cells;
    private final SheetReading reading;
    private final SheetWords words;
    private final DayReader days;
    private final LocalDate takeOver;
    private final Currency currency;

    DealReader(
            Cells cells,
            SheetReading reading,
            SheetWords words,
            DayReader days,
            LocalDate takeOver,
            Currency currency) {
        this.cells = cells;
        this.reading = reading;
        this.words = words;
        this.days = days;
        this.takeOver = takeOver;
        this.currency = currency;
    }

    /** @param units whose kinds may raise the plan's own price */
    OldHome.@Nullable Deal read(List<OldHome.Unit> units) {
        PlanFacts plan = plan().orElse(null);
        LocalDate last = lastVisit();
        LocalDate from = plan == null ? null : firstDay();
        if (plan == null || from == null) {
            if (last != null) {
                cells.note(SheetField.LAST_VISIT);
            }
            return null;
        }
        Term term = Term.ofYear(from);
        if (!takeOver.isBefore(term.until())) {
            cells.remark(
                    SheetField.FIRST_DAY,
                    Refusal.of("oldsheet.agreement-over", Map.of("day", DayInWords.of(term.last()))));
            cells.note(SheetField.PLAN);
            cells.note(SheetField.FIRST_DAY);
            cells.note(SheetField.LAST_VISIT);
            return null;
        }
        Money price = price(plan, units);
        return new OldHome.Deal(plan.code(), from, price, paid(price), visitsDone(), last);
    }

    private Optional<PlanFacts> plan() {
        String said = cells.text(SheetField.PLAN);
        if (WrittenWords.isNo(said)) {
            boolean begun = said.isEmpty() && !cells.text(SheetField.FIRST_DAY).isEmpty();
            Optional<PlanFacts> usual =
                    Optional.ofNullable(reading.plan()).filter(_ -> begun).flatMap(words::plan);
            if (begun && usual.isEmpty()) {
                cells.fault(SheetField.PLAN, Refusal.of("oldsheet.plan-missing"));
            }
            return usual;
        }
        String code = words.planCode(said).orElse(null);
        if (code == null) {
            cells.fault(
                    SheetField.PLAN, Refusal.of("oldsheet.plan-unknown", Map.of("word", PeopleReader.shortened(said))));
            return Optional.empty();
        }
        return words.plan(code);
    }

    private @Nullable LocalDate firstDay() {
        if (cells.text(SheetField.FIRST_DAY).isEmpty()) {
            cells.fault(SheetField.FIRST_DAY, Refusal.of("oldsheet.first-day-missing"));
            return null;
        }
        return days.whole(SheetField.FIRST_DAY);
    }

    private @Nullable LocalDate lastVisit() {
        LocalDate last = days.whole(SheetField.LAST_VISIT);
        if (last != null && last.isAfter(takeOver)) {
            cells.fault(
                    SheetField.LAST_VISIT, Refusal.of("oldsheet.visit-to-come", Map.of("day", DayInWords.of(last))));
            return null;
        }
        return last;
    }

    private Money price(PlanFacts plan, List<OldHome.Unit> units) {
        Money usual = plan.priceFor(units.stream().map(OldHome.Unit::kind).toList());
        if (cells.text(SheetField.PRICE).isEmpty()) {
            cells.remark(SheetField.PRICE, Refusal.of("oldsheet.price-of-plan", Map.of("price", usual)));
            return usual;
        }
        return amount(SheetField.PRICE).orElse(usual);
    }

    private @Nullable Money paid(Money price) {
        String said = cells.text(SheetField.PAID);
        if (said.isEmpty()) {
            if (reading.asksTheRest()) {
                cells.fault(SheetField.PAID, Refusal.of("oldsheet.paid-missing"));
            }
            return null;
        }
        if (WrittenWords.isYes(said)) {
            return price;
        }
        if (WrittenWords.isNo(said)) {
            return Money.zero(currency);
        }
        Money paid = amount(SheetField.PAID).orElse(null);
        if (paid != null && paid.compareTo(price) > 0) {
            cells.fault(SheetField.PAID, Refusal.of("oldsheet.paid-more", Map.of("paid", paid, "price", price)));
        }
        return paid;
    }

    private Optional<Money> amount(SheetField field) {
        Optional<BigDecimal> amount = WrittenPrice.read(cells.text(field));
        if (amount.isEmpty()) {
            cells.fault(
                    field, Refusal.of("oldsheet.amount", Map.of("word", PeopleReader.shortened(cells.text(field)))));
        }
        return amount.map(one -> Money.rounded(one, currency));
    }

    private @Nullable Integer visitsDone() {
        String said = cells.text(SheetField.VISITS_DONE);
        if (said.isEmpty()) {
            return null;
        }
        if (!said.matches("\\d|1\\d|2[0-4]")) {
            cells.fault(SheetField.VISITS_DONE, Refusal.of("oldsheet.visits-done"));
            return null;
        }
        return Integer.valueOf(said);
    }
}
