package changeover.deploy.rule;

import changeover.billing.ledger.Promised;
import changeover.billing.ledger.Recognition;
import changeover.billing.ledger.SoldTogether;
import changeover.contracts.calendar.Term;
import changeover.contracts.money.Money;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What of a plan's price is earned, promise by promise. */
final class RecognitionRule implements Rule {
    @Override
    public String name() {
        return "recognition";
    }

    @Override
    public String says() {
        return "Splits a plan's price over its promises by what each costs alone, and says what is earned on any day.";
    }

    @Override
    public String example() {
        return """
                {"price": "249.00", "currency": "CAD", "term": {"from": "2027-04-01", "months": 12},
                 "promises": [{"name": "spring visit", "alone": "140.00", "done": "2027-05-12"},
                              {"name": "autumn visit", "alone": "160.00"},
                              {"name": "standing ready", "alone": "40.00", "earned": "by-day"}],
                 "on": ["2027-05-01", "2027-08-15", "2028-04-01"]}
                ("earned" is when-done or by-day; a day of "on" is reckoned as it begins; "term" and "on" may be left out;
                 "soldTogether": [{"names": ["spring visit", "autumn visit"], "price": "260.00"}] for a discount of their own)""";
    }

    @Override
    public JsonNode answer(Question question) {
        Currency currency = question.currency();
        Recognition recognition = recognition(question, currency);
        Map<String, LocalDate> done = done(question);
        ObjectNode answer = Answers.object();
        ArrayNode shares = answer.putArray("shares");
        recognition
                .shares()
                .forEach(share -> shares.add(Answers.object()
                        .put("name", share.promised().name())
                        .put("alone", share.promised().alone().decimal())
                        .put("amount", share.amount().decimal())));
        List<Money> amounts =
                recognition.shares().stream().map(Recognition.Share::amount).toList();
        answer.put("sum", Money.sum(amounts, currency).decimal());
        ArrayNode days = answer.putArray("on");
        question.days("on")
                .forEach(day -> days.add(Answers.object()
                        .put("day", day.toString())
                        .put("earned", recognition.earnedBefore(day, done).decimal())
                        .put("owed", recognition.owedBefore(day, done).decimal())));
        return answer.put("currency", currency.getCurrencyCode());
    }

    /** A question without a term asks for the shares only: any year does. */
    static Recognition recognition(Question question, Currency currency) {
        if (!question.has("term") && question.has("on")) {
            throw new IllegalArgumentException("term is missing: what is earned on a day depends on it.");
        }
        Term term = question.has("term") ? question.term("term") : Term.ofYear(LocalDate.EPOCH);
        List<Promised> promised = new ArrayList<>();
        for (Question part : question.parts("promises")) {
            promised.add(new Promised(
                    part.text("name", "promise " + (promised.size() + 1)),
                    part.money("alone", currency),
                    earned(part.text("earned", "when-done"))));
        }
        List<SoldTogether> together = question.parts("soldTogether").stream()
                .map(part -> new SoldTogether(part.texts("names"), part.money("price", currency)))
                .toList();
        return Recognition.of(question.money("price", currency), term, promised, together);
    }

    static Map<String, LocalDate> done(Question question) {
        Map<String, LocalDate> done = new HashMap<>();
        int number = 0;
        for (Question part : question.parts("promises")) {
            number++;
            String name = part.text("name", "promise " + number);
            part.maybeDay("done").ifPresent(day -> done.put(name, day));
        }
        return done;
    }

    private static Promised.Earned earned(String word) {
        return switch (word) {
            case "when-done" -> Promised.Earned.WHEN_DONE;
            case "by-day" -> Promised.Earned.BY_DAY;
            default -> throw new IllegalArgumentException("earned must be when-done or by-day, not " + word + ".");
        };
    }
}
