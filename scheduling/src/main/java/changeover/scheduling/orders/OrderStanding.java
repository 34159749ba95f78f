package changeover.scheduling.orders;

import changeover.contracts.words.Wording;
import java.time.LocalDate;
import java.util.Locale;

/**
 * An order is late from the day after it was expected until all of it is here or given up; what is here waits for its visit, and is
 * over when the visit was kept or the part went back.
 */
public enum OrderStanding {
    LATE("late", "en retard"),
    COMING("on order", "commandée"),
    HERE("arrived", "arrivée"),
    PLANNED("its visit is made", "sa visite est prévue"),
    USED("its visit was kept", "sa visite est faite"),
    GONE_BACK("went back", "retournée"),
    GIVEN_UP("not coming", "ne viendra pas");

    private final Wording wording;

    OrderStanding(String en, String fr) {
        wording = new Wording(en, fr);
    }

    public Wording wording() {
        return wording;
    }

    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    public boolean isOver() {
        return switch (this) {
            case LATE, COMING, HERE, PLANNED -> false;
            case USED, GONE_BACK, GIVEN_UP -> true;
        };
    }

    /** Whether the first visit waits for it. */
    public boolean isAwaited() {
        return this == LATE || this == COMING;
    }

    public static OrderStanding of(OrderFacts facts, LocalDate today) {
        if (facts.rest().signum() > 0) {
            return facts.expected().isBefore(today) ? LATE : COMING;
        }
        if (facts.kept().signum() == 0) {
            return facts.arrived().signum() > 0 ? GONE_BACK : GIVEN_UP;
        }
        return switch (facts.second()) {
            case NONE -> HERE;
            case WITHOUT_DAY, HAS_A_DAY -> PLANNED;
            case KEPT -> USED;
        };
    }
}
