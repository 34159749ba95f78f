package changeover.deploy.rule;

import changeover.contracts.catalogue.Circumstances;
import changeover.contracts.catalogue.Measure;
import changeover.contracts.catalogue.ReadingRule;
import changeover.contracts.catalogue.ReadingRule.Judgement;
import changeover.contracts.catalogue.ReadingSpec;
import changeover.contracts.catalogue.Task;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Where a reading stands. */
final class ReadingAsked implements Rule {
    @Override
    public String name() {
        return "reading";
    }

    @Override
    public String says() {
        return "Says where a reading of a task stands against its band and its limit, and what to do past them.";
    }

    @Override
    public String example() {
        return """
                {"task": "elements-amps", "reading": "bank-1-amps", "value": "19.8", "unit": "A",
                 "nameplate": {"bank-kw": "5", "volts": "240"}, "others": {"volts": {"value": "236", "unit": "V"}}}""";
    }

    @Override
    public JsonNode answer(Question question) {
        Task task = question.task("task");
        ReadingSpec spec = task.reading(question.text("reading"))
                .orElseThrow(() -> new IllegalArgumentException(
                        "The task " + task.code() + " asks no reading " + question.text("reading") + "."));
        Judgement judgement = switch (spec.form()) {
            case NUMBER -> ReadingRule.judge(spec, measure(question, spec), circumstances(question));
            case YES_NO -> ReadingRule.judge(spec, question.text("value").equals("yes"));
            case TEXT, DATE -> throw new IllegalArgumentException("The reading " + spec.code() + " is not judged.");
        };
        return said(spec, judgement);
    }

    private static Measure measure(Question question, ReadingSpec spec) {
        String own = spec.unit();
        return Measure.of(question.text("value"), own == null ? question.text("unit") : question.text("unit", own));
    }

    private static Circumstances circumstances(Question question) {
        Map<String, Measure> others = question.named("others")
                .collect(Collectors.toMap(
                        Map.Entry::getKey,
                        other -> Measure.of(
                                other.getValue().text("value"), other.getValue().text("unit"))));
        return Circumstances.of(question.words("nameplate"), others);
    }

    private static ObjectNode said(ReadingSpec spec, Judgement judgement) {
        ObjectNode answer = Answers.object()
                .put("standing", judgement.standing().code())
                .put("actOn", judgement.actOn())
                .put("unit", spec.unit());
        var expected = judgement.expected();
        answer.put("low", expected == null ? null : plain(expected.low()));
        answer.put("high", expected == null ? null : plain(expected.high()));
        var beyond = spec.beyond();
        if (judgement.actOn() && beyond != null) {
            answer.set("whatToDo", Answers.wording(beyond));
        }
        return answer;
    }

    private static @Nullable String plain(@Nullable BigDecimal value) {
        return value == null ? null : value.stripTrailingZeros().toPlainString();
    }
}
