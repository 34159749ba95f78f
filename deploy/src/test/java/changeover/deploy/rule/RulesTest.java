package changeover.deploy.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What holds for every rule that can be asked. */
class RulesTest {

    @Test
    void every_promised_name_is_there() {
        assertTrue(Rules.ALL.stream()
                .map(Rule::name)
                .collect(Collectors.toSet())
                .containsAll(Set.of(
                        "windows",
                        "visitplan",
                        "interval",
                        "holidays",
                        "charges",
                        "tax",
                        "instalments",
                        "notice",
                        "recognition",
                        "refund",
                        "plancost",
                        "reading")));
    }

    @Test
    void the_example_of_every_help_is_answered_and_twice_alike() {
        for (Rule rule : Rules.ALL) {
            Asked help = Asked.rule("", rule.name(), "--help");
            assertEquals(0, help.exit());
            assertTrue(help.out().contains(rule.example()), rule.name());
            assertEquals(Asked.answer(rule.name(), rule.example()), Asked.answer(rule.name(), rule.example()));
        }
    }

    @Test
    void what_is_no_question_is_refused_in_one_sentence() {
        for (Rule rule : Rules.ALL) {
            for (String wrong : List.of("", "[]", "{", "7", "\"words\"", "{\"currency\": \"ZZZ\"}")) {
                if (!(rule instanceof IntervalRule && wrong.contains("ZZZ"))) {
                    Asked.refusedInASentence(rule.name(), wrong);
                }
            }
        }
        Asked.refused("weather", "{}", "There is no rule weather; deploy/rule --help lists them.");
    }
}
