package changeover.billing.pricing;

/**
 * Minutes of a visit outside the business's working hours: on a holiday of the place, on a Saturday or Sunday that is none,
 * or on any other day.
 */
public record OutsideHours(int night, int weekend, int holiday) {

    public static final OutsideHours NONE = new OutsideHours(0, 0, 0);

    OutsideHours times(int people) {
        return new OutsideHours(people * night, people * weekend, people * holiday);
    }

    public static OutsideHours night(int minutes) {
        return new OutsideHours(minutes, 0, 0);
    }
}
