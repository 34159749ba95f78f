package changeover.contracts.agreements;

import changeover.contracts.agreements.TakenOverAgreements.InForce;
import changeover.contracts.calendar.DayInWords;
import changeover.contracts.calendar.Term;
import changeover.contracts.customers.NamedInLists;
import changeover.contracts.money.Money;
import changeover.contracts.plans.Plan;
import changeover.contracts.takeover.BroughtFile;
import changeover.contracts.takeover.Title;
import changeover.contracts.takeover.WrittenFigure;
import changeover.contracts.words.Folded;
import changeover.contracts.words.Refusal;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** One row of the running agreements: not over by the take-over, and no more paid or still asked than its price. */
final class RunningRow {

    static final String HOME = "home";
    static final String FROM = "from";

    private static final String PLAN = "plan";
    private static final String PRICE = "price";
    private static final String PAID = "paid";
    private static final String ASKED = "to invoice";
    private static final String DONE = "visits done";
    private static final String LAST = "last visit";

    static final List<Title> TITLES = List.of(
            Title.needed(HOME, "maison"),
            Title.needed(PLAN, "formule"),
            Title.needed(FROM, "début"),
            Title.needed(PRICE, "prix"),
            Title.more(PAID, "payé"),
            Title.more(ASKED, "à facturer"),
            Title.more(DONE, "visites faites"),
            Title.more(LAST, "dernière visite"));

    private static final int MOST_VISITS = 24;

    private final NamedInLists.Names homes;
    private final List<Plan> plans;
    private final Currency currency;
    private final LocalDate day;

    RunningRow(NamedInLists.Names homes, List<Plan> plans, Currency currency, LocalDate day) {
        this.homes = homes;
        this.plans = plans;
        this.currency = currency;
        this.day = day;
    }

    /** @throws changeover.contracts.words.Refused for what cannot be so, at its column */
    InForce read(BroughtFile.Row row) {
        UUID home = homes.find(row, HOME);
        String plan = plan(row.cell(PLAN));
        LocalDate from = day(row, FROM);
        if (from == null) {
            throw Refusal.of("brought.missing").at(FROM).thrown();
        }
        Term term = Term.ofYear(from);
        if (!day.isBefore(term.until())) {
            throw Refusal.of("running.over", Map.of("day", DayInWords.of(term.last())))
                    .at(FROM)
                    .thrown();
        }
        Money price = money(row, PRICE);
        if (price == null) {
            throw Refusal.of("brought.missing").at(PRICE).thrown();
        }
        Money paid = money(row, PAID);
        if (paid != null && paid.compareTo(price) > 0) {
            throw Refusal.of("oldsheet.paid-more", Map.of("paid", paid, "price", price))
                    .at(PAID)
                    .thrown();
        }
        Money asked = money(row, ASKED);
        if (asked != null && asked.compareTo(price) > 0) {
            throw Refusal.of("oldsheet.paid-more", Map.of("paid", asked, "price", price))
                    .at(ASKED)
                    .thrown();
        }
        LocalDate last = day(row, LAST);
        if (last != null && last.isAfter(day)) {
            throw Refusal.of("oldsheet.visit-to-come", Map.of("day", DayInWords.of(last)))
                    .at(LAST)
                    .thrown();
        }
        return new InForce(
                home, plan, from, price, paid, asked == null ? Money.zero(currency) : asked, visits(row), last);
    }

    private String plan(String said) {
        String folded = Folded.of(said);
        return plans.stream()
                .filter(plan -> Stream.of(
                                plan.code(), plan.name().en(), plan.name().fr())
                        .anyMatch(name -> Folded.of(name).equals(folded)))
                .map(Plan::code)
                .findFirst()
                .orElseThrow(() -> Refusal.of("brought.plan-unknown", Map.of("said", said))
                        .at(PLAN)
                        .thrown());
    }

    private static @Nullable LocalDate day(BroughtFile.Row row, String column) {
        return row.cell(column).isEmpty() ? null : row.day(column);
    }

    private @Nullable Money money(BroughtFile.Row row, String column) {
        String said = row.cell(column);
        if (said.isEmpty()) {
            return null;
        }
        BigDecimal amount = WrittenFigure.read(said)
                .filter(figure -> figure.stripTrailingZeros().scale() <= currency.getDefaultFractionDigits())
                .orElseThrow(() -> Refusal.of("brought.figure", Map.of("said", said))
                        .at(column)
                        .thrown());
        return Money.of(amount.setScale(currency.getDefaultFractionDigits()), currency);
    }

    private static @Nullable Integer visits(BroughtFile.Row row) {
        String said = row.cell(DONE);
        if (said.isEmpty()) {
            return null;
        }
        if (!said.matches("\\d{1,2}") || Integer.parseInt(said) > MOST_VISITS) {
            throw Refusal.of("brought.figure", Map.of("said", said)).at(DONE).thrown();
        }
        return Integer.valueOf(said);
    }
}
