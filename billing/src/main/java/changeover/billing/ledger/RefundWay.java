package changeover.billing.ledger;

import java.util.Arrays;

/** How much of a plan's price the business keeps when the plan is cancelled. */
public enum RefundWay {
    /** The days that are over, of all days of the term. */
    PRO_RATA("pro-rata"),
    /** What was done until then, and the days of standing ready. */
    WORK_DONE("work-done"),
    /** The days that are over, and what was done besides. */
    PRO_RATA_LESS_WORK("pro-rata-less-work");

    private final String code;

    RefundWay(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }

    public static RefundWay of(String code) {
        return Arrays.stream(values())
                .filter(way -> way.code.equals(code))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("There is no way of refunding called " + code + "."));
    }
}
