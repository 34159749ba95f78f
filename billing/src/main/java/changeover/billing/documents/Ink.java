package changeover.billing.documents;

/** The few inks of a paper; none carries a meaning that a word or a shape does not also carry. */
enum Ink {
    INK("0.082 0.129 0.102"),
    QUIET("0.267 0.329 0.286"),
    LINE("0.400 0.478 0.416"),
    RULE("0.749 0.804 0.729"),
    STAMP("0.290 0.153 0.522"),
    RED("0.639 0.098 0.106"),
    URGENT_GROUND("0.973 0.894 0.875"),
    BAND("0.780 0.831 0.753"),
    COOLING("0.043 0.333 0.404"),
    COOLING_TINT("0.863 0.922 0.918"),
    HEATING("0.541 0.227 0.039"),
    HEATING_TINT("0.957 0.890 0.827"),
    BLACK("0 0 0"),
    WHITE("1 1 1");

    private final String parts;

    Ink(String redGreenBlue) {
        this.parts = redGreenBlue;
    }

    String fill() {
        return parts + " rg\n";
    }

    String stroke() {
        return parts + " RG\n";
    }
}
