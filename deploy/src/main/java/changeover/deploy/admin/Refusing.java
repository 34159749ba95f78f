package changeover.deploy.admin;

/** Why a command is not done, in one sentence. */
final class Refusing extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Refusing(String sentence) {
        super(sentence);
    }

    Refusing(String sentence, Throwable cause) {
        super(sentence, cause);
    }
}
