package changeover.scheduling.calls;

import changeover.contracts.tenants.Owned;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;

/** Within how many hours the business answers a call of one urgency, with a plan or without. */
@Entity
@Table(name = "answer_time")
class AnswerTime extends Owned {

    @Column(updatable = false)
    private String urgency = "";

    @Column(name = "with_plan", updatable = false)
    private boolean withPlan;

    private int hours;

    static AnswerTime of(AnswerHours.Asked asked, int hours) {
        var time = new AnswerTime();
        time.urgency = asked.urgency().code();
        time.withPlan = asked.withPlan();
        time.hours = hours;
        return time;
    }

    AnswerHours.Asked asked() {
        return new AnswerHours.Asked(Urgency.ofCode(urgency), withPlan);
    }

    int hours() {
        return hours;
    }

    void becomes(int newHours) {
        hours = newHours;
    }
}
