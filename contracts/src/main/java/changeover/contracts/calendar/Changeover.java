package changeover.contracts.calendar;

/** The two moments this trade turns on: homes are made ready to cool, and made ready to heat. */
public enum Changeover {
    COOLING,
    HEATING;

    /** As it stands in the table: {@code cooling}, {@code heating}. */
    public String code() {
        return this == COOLING ? "cooling" : "heating";
    }

    public static Changeover ofCode(String code) {
        return switch (code) {
            case "cooling" -> COOLING;
            case "heating" -> HEATING;
            default -> throw new IllegalArgumentException("changeover: " + code);
        };
    }
}
