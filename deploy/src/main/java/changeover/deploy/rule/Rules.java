package changeover.deploy.rule;

import changeover.contracts.words.Refusals;
import changeover.contracts.words.Refused;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** {@code deploy/rule}: finds the rule by its name, asks it what stands on standard input, and prints its answer. */
public final class Rules {
    private static final List<Rule> ALL = List.of(
            new WindowsRule(),
            new VisitPlanRule(),
            new HolidaysRule(),
            new ChargesRule(),
            new TaxRule(),
            new InstalmentsRule(),
            new NoticeRule(),
            new ReadingAsked());

    private static final List<String> LATER = List.of("interval", "recognition", "refund");

    private Rules() {}

    public static void main(String[] words) {
        changeover.deploy.launcher.Logs.quiet();
        System.exit(run(words));
    }

    private static int run(String... words) {
        boolean help = List.of(words).contains("--help");
        Optional<String> name =
                List.of(words).stream().filter(word -> !word.startsWith("--")).findFirst();
        if (name.isEmpty()) {
            return overview(help);
        }
        if (LATER.contains(name.get())) {
            System.err.println("The rule " + name.get() + " is not yet there: it comes with its own issue.");
            return 1;
        }
        Optional<Rule> rule =
                ALL.stream().filter(some -> some.name().equals(name.get())).findFirst();
        if (rule.isEmpty()) {
            System.err.println("There is no rule " + name.get() + "; deploy/rule --help lists them.");
            return 1;
        }
        if (help) {
            System.out.println(rule.get().says() + "\n  deploy/rule " + name.get()
                    + " < in.json\nAn example of its input:\n" + rule.get().example());
            return 0;
        }
        return answer(rule.get());
    }

    private static int answer(Rule rule) {
        try {
            JsonNode asked = Answers.JSON.readTree(System.in);
            if (asked == null || !asked.isObject()) {
                throw new IllegalArgumentException(
                        "The input must be one JSON object; deploy/rule " + rule.name() + " --help shows one.");
            }
            JsonNode answer = rule.answer(new Question(asked, ""));
            System.out.println(Answers.JSON.writerWithDefaultPrettyPrinter().writeValueAsString(answer));
            return 0;
        } catch (JsonProcessingException e) {
            System.err.println("The input is not JSON; deploy/rule " + rule.name() + " --help shows an example.");
        } catch (Refused e) {
            System.err.println(e.refusals().stream()
                    .map(refusal -> Refusals.sentence(refusal, Locale.ENGLISH))
                    .collect(Collectors.joining(" ")));
        } catch (IllegalArgumentException | ArithmeticException e) {
            System.err.println(sentence(String.valueOf(e.getMessage())));
        } catch (IOException e) {
            System.err.println("The input could not be read: " + e.getMessage());
        }
        return 1;
    }

    /** A word that a list of words does not know comes with the list's technical name, which says nothing to anybody. */
    private static String sentence(String message) {
        String plain = message.replace('\n', ' ');
        return plain.startsWith("No enum constant")
                ? "The word " + plain.substring(plain.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT)
                        + " is not known here."
                : plain;
    }

    private static int overview(boolean help) {
        String names = ALL.stream()
                .map(rule -> "  " + rule.name() + ": " + rule.says())
                .collect(Collectors.joining("\n"));
        if (help) {
            System.out.println(
                    "Asks one of the product's own rules with numbers of your own.\n  deploy/rule NAME < in.json\n"
                            + names + "\n  " + String.join(", ", LATER) + ": not yet there");
            return 0;
        }
        System.err.println("deploy/rule needs the name of a rule; deploy/rule --help lists them.");
        return 1;
    }
}
