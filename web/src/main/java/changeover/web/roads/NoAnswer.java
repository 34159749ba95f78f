package changeover.web.roads;

/** The table of roads gave no answer that can be used; the message says why, for the log. */
final class NoAnswer extends Exception {

    private static final long serialVersionUID = 1L;

    NoAnswer(String why) {
        super(why);
    }
}
