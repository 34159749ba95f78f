package changeover.deploy.rule;

import changeover.billing.pricing.Charge;
import changeover.billing.pricing.Charges;
import changeover.billing.pricing.ClosedVisit;
import changeover.billing.pricing.Coverage;
import changeover.billing.pricing.NoAccessFee;
import changeover.billing.pricing.OutsideHours;
import changeover.billing.pricing.VisitKind;
import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What a closed visit costs, line by line. */
final class ChargesRule implements Rule {
    @Override
    public String name() {
        return "charges";
    }

    @Override
    public String says() {
        return "Says of each part and minute of a closed visit whether it is included, discounted or billable, and why.";
    }

    @Override
    public String example() {
        return """
                {"day": "2027-04-12", "kind": "call", "people": 1, "promisedMinutes": 0, "extraMinutes": 40, "nightMinutes": 0, "currency": "CAD",
                 "parts": [{"code": "filter-16x25x1", "kind": "filter", "name": "Filter 16x25x1", "quantity": "2", "unit": "C62", "warranty": false}],
                 "coverage": {"plan": "Comfort", "minutes": 30, "discountPercent": "10", "parts": {"filter": {"cap": "4", "left": "1"}}},
                 "prices": [{"kind": "labour", "code": "hour", "price": "120.00", "from": "2027-01-01"},
                            {"kind": "part", "code": "filter-16x25x1", "cost": "4.25", "from": "2027-01-01"},
                            {"kind": "travel", "code": "visit", "price": "65.00", "from": "2027-01-01"},
                            {"kind": "travel", "code": "river", "price": "80.00", "from": "2027-01-01"}],
                 "markUps": [{"scope": "kind", "item": "filter", "percent": "110", "step": "0.05"},
                             {"scope": "cost", "costFrom": "0.00", "percent": "60"}],
                 "labour": {"stepMinutes": 30, "minimumMinutes": 60},
                 "postal": "X0X 1A2", "kilometres": "18.4",
                 "zones": [{"code": "river", "name": "River", "postals": ["X0X"]}, {"code": "near", "name": "Near", "withinKm": 20}]}""";
    }

    @Override
    public JsonNode answer(Question question) {
        Currency currency = question.currency();
        PricesAsked asked = new PricesAsked(question, currency);
        ClosedVisit visit = new ClosedVisit(
                question.day("day"),
                VisitKind.of(question.text("kind", "plan")),
                people(question),
                question.number("promisedMinutes", 0),
                question.number("extraMinutes", 0),
                0,
                new OutsideHours(
                        question.number("nightMinutes", 0),
                        question.number("weekendMinutes", 0),
                        question.number("holidayMinutes", 0)),
                question.parts("parts").stream().map(ChargesRule::part).toList(),
                asked.zone(question.day("day")).orElse(null));
        List<Charge> charges = question.yes("noAccess", false)
                ? NoAccessFee.of(visit.day(), visit.kind(), asked.book(), currency).stream()
                        .toList()
                : Charges.of(visit, coverage(question), asked.book(), currency);
        ObjectNode answer = Answers.object();
        ArrayNode lines = answer.putArray("lines");
        charges.forEach(charge -> lines.add(line(charge)));
        answer.put(
                "net",
                Money.sum(charges.stream().map(Charge::net).toList(), currency).decimal());
        return answer.put("currency", currency.getCurrencyCode());
    }

    private static int people(Question question) {
        int people = question.number("people", 1);
        if (people < 1 || people > 2) {
            throw new IllegalArgumentException("people must be 1 or 2, not " + people + ".");
        }
        return people;
    }

    private static ClosedVisit.UsedPart part(Question part) {
        String name = part.text("name", part.text("code"));
        return new ClosedVisit.UsedPart(
                part.text("code"),
                part.text("kind", part.text("code")),
                new Wording(name, part.text("nameFr", name)),
                part.decimal("quantity"),
                part.text("unit", "C62"),
                part.yes("warranty", false));
    }

    private static Coverage coverage(Question question) {
        if (!question.has("coverage")) {
            return Coverage.NONE;
        }
        Question coverage = question.part("coverage");
        Map<String, Coverage.Cap> caps = new HashMap<>();
        coverage.named("parts")
                .forEach(cap -> caps.put(
                        cap.getKey(),
                        new Coverage.Cap(
                                cap.getValue().decimal("cap"), cap.getValue().decimal("left"))));
        String plan = coverage.text("plan", "Plan");
        return new Coverage(
                new Wording(plan, coverage.text("planFr", plan)),
                caps,
                coverage.number("minutes", 0),
                coverage.has("discountPercent") ? coverage.decimal("discountPercent") : BigDecimal.ZERO);
    }

    private static ObjectNode line(Charge charge) {
        Money price = charge.unitPrice();
        ObjectNode line = Answers.object()
                .put("kind", charge.kind().code())
                .put("item", charge.item())
                .put("covered", charge.covered().code())
                .put("quantity", charge.quantity().toPlainString())
                .put("unit", charge.unit())
                .put("unitPrice", price == null ? null : price.decimal())
                .put("discountPercent", charge.discountPercent().toPlainString())
                .put("discount", charge.discount().decimal())
                .put("net", charge.net().decimal());
        line.set("words", Answers.wording(charge.words()));
        return line.set("why", Answers.wording(charge.why()));
    }
}
