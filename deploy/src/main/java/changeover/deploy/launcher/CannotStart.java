package changeover.deploy.launcher;

/** Why an installation does not start, in one sentence for the person who asked. */
public final class CannotStart extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public CannotStart(String sentence) {
        super(sentence);
    }

    public CannotStart(String sentence, Throwable cause) {
        super(sentence, cause);
    }
}
