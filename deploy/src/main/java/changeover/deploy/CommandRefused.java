package changeover.deploy;

/** Why a command was not done, in one sentence for the person who gave it. */
public final class CommandRefused extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public CommandRefused(String sentence) {
        super(sentence);
    }

    public CommandRefused(String sentence, Throwable cause) {
        super(sentence, cause);
    }
}
