package changeover.deploy.rule;

import changeover.contracts.calendar.Holiday;
import changeover.contracts.calendar.Holidays;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
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
        String place = question.text("place");
        int year = question.number("year");
        if (year < 1583 || year > 9999) {
            throw new IllegalArgumentException("year must be from 1583 to 9999, not " + year + ".");
        }
        List<Holiday> known = Holidays.in(place, year, Holidays.EasterDay.valueOf(easter));
        if (known.isEmpty()) {
            throw new IllegalArgumentException(
                    "No holidays are known for " + place + "; a business there writes down its" + " own closed days.");
        }
        ObjectNode answer = Answers.object();
        ArrayNode days = answer.putArray("holidays");
        known.forEach(holiday -> days.add(Answers.object()
                .put("day", holiday.day().toString())
                .put("en", holiday.nameEn())
                .put("fr", holiday.nameFr())));
        return answer;
    }
}
