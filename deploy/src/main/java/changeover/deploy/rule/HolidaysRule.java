package changeover.deploy.rule;

import changeover.contracts.calendar.Holidays;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;

/** The days off that the law of a place gives. */
final class HolidaysRule implements Rule {
    @Override
    public String name() {
        return "holidays";
    }

    @Override
    public String says() {
        return "Lists the days off that the law of a place gives in a year.";
    }

    @Override
    public String example() {
        return """
                {"place": "CA-QC", "year": 2027, "easter": "good-friday"}""";
    }

    @Override
    public JsonNode answer(Question question) {
        String easter =
                question.text("easter", "good-friday").toUpperCase(Locale.ROOT).replace('-', '_');
        ObjectNode answer = Answers.object();
        ArrayNode days = answer.putArray("holidays");
        Holidays.in(question.text("place"), question.number("year"), Holidays.EasterDay.valueOf(easter))
                .forEach(holiday -> days.add(Answers.object()
                        .put("day", holiday.day().toString())
                        .put("en", holiday.nameEn())
                        .put("fr", holiday.nameFr())));
        return answer;
    }
}
