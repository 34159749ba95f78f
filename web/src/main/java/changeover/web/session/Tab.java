package changeover.web.session;

/** One of the eight words under which an office finds everything. */
public enum Tab {
    TODAY("today"),
    HOMES("homes"),
    SEASON("season"),
    PLANS("plans"),
    AGREEMENTS("agreements"),
    MONEY("money"),
    PARTS("parts"),
    SHOP("shop");

    private final String path;

    Tab(String path) {
        this.path = path;
    }

    /** The tab's address below the business's own, without a slash. */
    public String path() {
        return path;
    }
}
