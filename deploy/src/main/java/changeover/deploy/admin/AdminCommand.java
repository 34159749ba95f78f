package changeover.deploy.admin;

import java.util.List;

/** One thing an operator does. */
interface AdminCommand {
    /** The words that call it. */
    String words();

    /** What it does, in one sentence, and how it is written. */
    String help();

    /**
     * Does it and prints its answer.
     *
     * @return the exit code
     * @throws Refusing with one sentence, when it is not done
     */
    int run(Running running, List<String> rest) throws Exception;
}
