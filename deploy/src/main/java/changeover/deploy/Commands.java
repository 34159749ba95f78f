package changeover.deploy;

import changeover.contracts.words.Refusals;
import changeover.contracts.words.Refused;
import io.quarkus.arc.All;
import io.quarkus.runtime.QuarkusApplication;
import jakarta.inject.Inject;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jboss.logging.Logger;

/** Finds the command that the words name and does it; a refusal is a sentence on standard error. */
public class Commands implements QuarkusApplication {
    private static final Logger LOG = Logger.getLogger(Commands.class);

    @Inject
    @All
    List<Command> commands;

    @Override
    public int run(String... words) {
        Optional<Command> named =
                commands.stream().filter(command -> isCalled(command, words)).findFirst();
        if (named.isEmpty()) {
            System.err.println("Changeover knows no command " + String.join(" ", words) + ".");
            return 1;
        }
        int own = named.get().words().split(" ").length;
        return run(named.get(), Arrays.asList(words).subList(own, words.length));
    }

    private static boolean isCalled(Command command, String... words) {
        return (String.join(" ", words) + " ").startsWith(command.words() + " ");
    }

    private static int run(Command command, List<String> rest) {
        try {
            command.run(rest);
            System.out.flush();
            return 0;
        } catch (CommandRefused | IllegalArgumentException e) {
            System.err.println(e.getMessage());
        } catch (Refused e) {
            System.err.println(sentences(e));
        } catch (Exception e) {
            LOG.error("the command failed", e);
            System.err.println("It could not be done: " + e.getMessage());
        }
        return 1;
    }

    private static String sentences(Refused refused) {
        return refused.refusals().stream()
                .map(refusal -> Refusals.sentence(refusal, Locale.ENGLISH))
                .collect(Collectors.joining(" "));
    }
}
