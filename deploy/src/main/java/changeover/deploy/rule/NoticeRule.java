package changeover.deploy.rule;

import changeover.contracts.agreements.NoticeWindow;
import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;

/** When a customer must be told that an agreement ends. */
final class NoticeRule implements Rule {
    @Override
    public String name() {
        return "notice";
    }

    @Override
    public String says() {
        return "Says between which days a customer must be told that the agreement ends or renews, by the law of the place.";
    }

    @Override
    public String example() {
        return """
                {"place": "CA-QC", "termEnd": "2027-12-31", "customerDeadline": "2027-12-31"}
                ("termEnd" is the last day of the term; "customerDeadline" the last day to say no, the same when it is missing)""";
    }

    @Override
    public JsonNode answer(Question question) {
        LocalDate end = question.day("termEnd");
        NoticeWindow notice = NoticeWindow.of(
                question.text("place"),
                end,
                question.maybeDay("customerDeadline").orElse(end));
        return Answers.object()
                .put("earliest", notice.earliest().toString())
                .put("latest", notice.latest().toString())
                .put("rule", notice.rule())
                .put("source", notice.source());
    }
}
