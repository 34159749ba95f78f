package changeover.billing.costs;

import changeover.billing.pricing.Overhead;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Owned;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refused;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What the business's own work costs beyond wages and parts, from a day on; newer figures are a new row. */
@Entity
@Table(name = "running_cost")
public class RunningCost extends Owned {

    public static final int LONGEST_SET_UP = 240;
    public static final BigDecimal MOST_PERCENT = BigDecimal.valueOf(1000);

    private static final String PERCENT = "percent";
    private static final String HOUR = "hour";

    @Column(name = "valid_from")
    private LocalDate validFrom = LocalDate.EPOCH;

    @Column(name = "set_up_minutes")
    private int setUpMinutes;

    private String overhead = PERCENT;

    @Column(name = "overhead_percent")
    private @Nullable BigDecimal overheadPercent;

    @Column(name = "overhead_minor")
    private @Nullable Long overheadMinor;

    private String currency = "";
    private @Nullable BigDecimal latitude;
    private @Nullable BigDecimal longitude;

    /**
     * As typed by the owner.
     *
     * @param setUpMinutes at each visit, beyond its tasks
     * @param latitude of the place where trips begin, degrees north; null where nobody wrote it down
     * @param longitude degrees east
     */
    public record Facts(
            LocalDate from,
            int setUpMinutes,
            Overhead overhead,
            @Nullable BigDecimal latitude,
            @Nullable BigDecimal longitude) {}

    /** @throws Refused where a figure cannot be so */
    static RunningCost from(Facts facts, Currency currency) {
        RunningCost cost = new RunningCost();
        cost.validFrom = facts.from();
        cost.currency = currency.getCurrencyCode();
        cost.says(facts);
        return cost;
    }

    /** The same day again: a figure was mistyped. */
    void says(Facts facts) {
        List<Refusal> refusals = refusals(facts);
        if (!refusals.isEmpty()) {
            throw new Refused(refusals);
        }
        setUpMinutes = facts.setUpMinutes();
        latitude = facts.latitude();
        longitude = facts.longitude();
        switch (facts.overhead()) {
            case Overhead.Percent(BigDecimal percent) -> {
                overhead = PERCENT;
                overheadPercent = percent;
                overheadMinor = null;
            }
            case Overhead.AnHour(Money hour) -> {
                overhead = HOUR;
                overheadPercent = null;
                overheadMinor = hour.minor();
            }
        }
    }

    private static List<Refusal> refusals(Facts facts) {
        List<Refusal> refusals = new ArrayList<>();
        if (facts.setUpMinutes() < 0 || facts.setUpMinutes() > LONGEST_SET_UP) {
            refusals.add(Refusal.of("cost.set-up").at("setUpMinutes"));
        }
        switch (facts.overhead()) {
            case Overhead.Percent(BigDecimal percent) -> {
                if (percent.signum() < 0
                        || percent.compareTo(MOST_PERCENT) > 0
                        || percent.stripTrailingZeros().scale() > 2) {
                    refusals.add(Refusal.of("cost.overhead-percent").at("overheadPercent"));
                }
            }
            case Overhead.AnHour(Money hour) -> {
                if (hour.isNegative()) {
                    refusals.add(Refusal.of("cost.overhead-hour").at("overheadHour"));
                }
            }
        }
        if ((facts.latitude() == null) != (facts.longitude() == null)) {
            refusals.add(Refusal.of("cost.place-both").at(facts.latitude() == null ? "latitude" : "longitude"));
        }
        if (beyond(facts.latitude(), 90)) {
            refusals.add(Refusal.of("home.latitude").at("latitude"));
        }
        if (beyond(facts.longitude(), 180)) {
            refusals.add(Refusal.of("home.longitude").at("longitude"));
        }
        return refusals;
    }

    private static boolean beyond(@Nullable BigDecimal degrees, int most) {
        return degrees != null && degrees.abs().compareTo(BigDecimal.valueOf(most)) > 0;
    }

    /** What holds on the day: the latest figures by then, else the first there are; null when there are none. */
    static @Nullable RunningCost on(List<RunningCost> all, LocalDate day) {
        RunningCost found = null;
        for (RunningCost one : all) {
            boolean then = !one.validFrom.isAfter(day);
            if (found == null
                    || then && (found.validFrom.isAfter(day) || one.validFrom.isAfter(found.validFrom))
                    || !then && found.validFrom.isAfter(one.validFrom)) {
                found = one;
            }
        }
        return found;
    }

    public Facts facts() {
        Overhead said = overheadMinor == null
                ? new Overhead.Percent(overheadPercent == null ? BigDecimal.ZERO : overheadPercent)
                : new Overhead.AnHour(new Money(overheadMinor, Currency.getInstance(currency)));
        return new Facts(validFrom, setUpMinutes, said, latitude, longitude);
    }
}
