package changeover.scheduling.dayplan;

import changeover.contracts.tenants.Owned;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;

/** A holiday on which the business does otherwise than is usual in its place: works, or gives one more. */
@Entity
@Table(name = "holiday_choice")
class ChosenHoliday extends Owned {

    @Column(updatable = false)
    private String holiday = "";

    @Column(updatable = false)
    private boolean kept;

    static ChosenHoliday of(String holiday, boolean kept) {
        var chosen = new ChosenHoliday();
        chosen.holiday = holiday;
        chosen.kept = kept;
        return chosen;
    }

    String holiday() {
        return holiday;
    }

    boolean isKept() {
        return kept;
    }
}
