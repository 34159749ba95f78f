package changeover.deploy;

import java.util.List;

/** Something an operator does inside the application, by command line; every bean of this kind is found by its words. */
public interface Command {
    /** The words that call it, such as {@code business add}. */
    String words();

    /**
     * Does it; what it prints is the answer.
     *
     * @throws CommandRefused with one sentence, when it does not
     */
    void run(List<String> rest) throws Exception;
}
