package changeover.billing.documents;

/** How a line is drawn: ink is solid, pencil is dashed. */
enum Dash {
    SOLID("[] 0 d\n"),
    DASHED("[3 2] 0 d\n"),
    DOTTED("[1 2.2] 0 d\n");

    private final String order;

    Dash(String order) {
        this.order = order;
    }

    String order() {
        return order;
    }
}
