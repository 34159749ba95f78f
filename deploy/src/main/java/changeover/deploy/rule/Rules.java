package changeover.deploy.rule;

import changeover.contracts.words.Refusals;
import changeover.contracts.words.Refused;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.time.DateTimeException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** {@code deploy/rule}: finds the rule by its name, asks it what stands on standard input, and prints its answer. */
public final class Rules {
    static final List<Rule> ALL = List.of(
            new WindowsRule(),
            new VisitPlanRule(),
            new HolidaysRule(),
            new ChargesRule(),
            new TaxRule(),
            new InstalmentsRule(),
            new NoticeRule(),
            new ReadingAsked(),
            new IntervalRule(),
            new RecognitionRule(),
            new RefundRule(),
            new PlanCostRule());

    private final InputStream in;
    private final PrintStream out;
    private final PrintStream err;

    Rules(InputStream in, PrintStream out, PrintStream err) {
        this.in = in;
        this.out = out;
        this.err = err;
    }

    public static void main(String[] words) {
        changeover.deploy.launcher.Logs.quiet();
        System.exit(new Rules(System.in, System.out, System.err).run(words));
    }

    int run(String... words) {
        boolean help = List.of(words).contains("--help");
        Optional<String> name =
                List.of(words).stream().filter(word -> !word.startsWith("--")).findFirst();
        if (name.isEmpty()) {
            return overview(help);
        }
        Optional<Rule> rule =
                ALL.stream().filter(some -> some.name().equals(name.get())).findFirst();
        if (rule.isEmpty()) {
            err.println("There is no rule " + name.get() + "; deploy/rule --help lists them.");
            return 1;
        }
        if (help) {
            out.println(rule.get().says() + "\n  deploy/rule " + name.get() + " < in.json\nAn example of its input:\n"
                    + rule.get().example());
            return 0;
        }
        return answer(rule.get());
    }

    private int answer(Rule rule) {
        try {
            JsonNode asked = Answers.JSON.readTree(in);
            if (asked == null || !asked.isObject()) {
                throw new IllegalArgumentException(
                        "The input must be one JSON object; deploy/rule " + rule.name() + " --help shows one.");
            }
            JsonNode answer = rule.answer(new Question(asked, ""));
            out.println(Answers.JSON.writerWithDefaultPrettyPrinter().writeValueAsString(answer));
            return 0;
        } catch (JsonProcessingException e) {
            err.println("The input is not JSON; deploy/rule " + rule.name() + " --help shows an example.");
        } catch (Refused e) {
            err.println(e.refusals().stream()
                    .map(refusal -> Refusals.sentence(refusal, Locale.ENGLISH))
                    .collect(Collectors.joining(" ")));
        } catch (IllegalArgumentException | ArithmeticException | DateTimeException e) {
            err.println(sentence(String.valueOf(e.getMessage())));
        } catch (IOException e) {
            err.println("The input could not be read: " + e.getMessage());
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

    private int overview(boolean help) {
        String names = ALL.stream()
                .map(rule -> "  " + rule.name() + ": " + rule.says())
                .collect(Collectors.joining("\n"));
        if (help) {
            out.println("Asks one of the product's own rules with numbers of your own.\n  deploy/rule NAME < in.json\n"
                    + names);
            return 0;
        }
        err.println("deploy/rule needs the name of a rule; deploy/rule --help lists them.");
        return 1;
    }
}
