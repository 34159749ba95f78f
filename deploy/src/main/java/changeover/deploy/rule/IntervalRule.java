package changeover.deploy.rule;

import changeover.scheduling.intervals.HouseholdInterval;
import changeover.scheduling.intervals.Limits;
import changeover.scheduling.intervals.OtherHomes;
import changeover.scheduling.intervals.Prior;
import changeover.scheduling.intervals.Rhythm;
import changeover.scheduling.intervals.Seen;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collections;

/** A home's own rhythm of looking at a filter and changing it. */
final class IntervalRule implements Rule {
    @Override
    public String name() {
        return "interval";
    }

    @Override
    public String says() {
        return "Learns from when a home's filters were clean and grey how long they last there, and when to look and to change.";
    }

    @Override
    public String example() {
        return """
                {"unit": "weeks", "prior": "homes", "acceptedChance": 0.15, "thicknessInches": 1,
                 "seen": [{"greyAt": 9}, {"greyAt": 10}, {"cleanAt": 4, "greyAt": 12}, {"cleanAt": 6, "times": 2}],
                 "otherHomes": [{"seen": [{"greyAt": 8}, {"greyAt": 9}]}, {"seen": [{"cleanAt": 12}]}]}
                (times count from the day the filter was put in, in "unit": hours, days, weeks or months; "greyAt" alone is
                 the day itself, with "cleanAt" it lies between the two, "cleanAt" alone is still clean then. "prior": "flat"
                 believes nothing, "trade" published advice, "homes" the other homes; or {"scale": 11, "scaleFactor": 1.6,
                 "shape": 5, "shapeFactor": 1.5}. "log", beside "seen" or instead of it, is the records of one filter slot by their
                 days: {"day": "2027-03-01", "by": "household" or "technician", "filter": "clean" or "grey", "changed": true};
                 the household's tick and the technician's record of one change count once. "labelMonths" is what the unit's own label says and goes before the thickness)""";
    }

    @Override
    public JsonNode answer(Question question) {
        SpanUnit unit = SpanUnit.of(question.text("unit", "days"));
        Limits limits = question.has("labelMonths")
                ? Limits.ofLabel(question.number("labelMonths"))
                : Limits.ofThickness(
                        question.has("thicknessInches")
                                ? question.decimal("thicknessInches").doubleValue()
                                : 4);
        double accepted = question.has("acceptedChance")
                ? question.decimal("acceptedChance").doubleValue()
                : 0.15;
        HouseholdInterval interval =
                HouseholdInterval.of(SeenAsked.of(question, unit), prior(question, unit, limits), limits, accepted);
        return said(interval, unit);
    }

    private static Prior prior(Question question, SpanUnit unit, Limits limits) {
        if (question.isObject("prior")) {
            Question own = question.part("prior");
            return new Prior.Weak(
                    unit.days(own.decimal("scale")),
                    own.decimal("scaleFactor").doubleValue(),
                    own.decimal("shape").doubleValue(),
                    own.decimal("shapeFactor").doubleValue());
        }
        String word = question.text("prior", question.has("otherHomes") ? "homes" : "trade");
        return switch (word) {
            case "flat" -> Prior.FLAT;
            case "trade" -> Prior.ofTheTrade(limits);
            case "homes" ->
                OtherHomes.belief(
                        question.parts("otherHomes").stream()
                                .map(home -> SeenAsked.of(home, unit))
                                .toList(),
                        Prior.ofTheTrade(limits));
            default ->
                throw new IllegalArgumentException(
                        "prior must be flat, trade, homes or an object with scale, scaleFactor, shape and shapeFactor,"
                                + " not " + word + ".");
        };
    }

    private static ObjectNode said(HouseholdInterval interval, SpanUnit unit) {
        Rhythm rhythm = interval.rhythm();
        ObjectNode answer = Answers.object();
        answer.put("unit", unit.word())
                .put("shape", rounded(interval.likeliest().shape(), 4))
                .put("scale", rounded(unit.from(interval.likeliest().scaleDays()), 3))
                .put("mean", rounded(unit.from(interval.likeliest().meanDays()), 3))
                .put("atTheEdge", interval.likeliestAtTheEdge());
        answer.set("eightOfTen", between(interval, unit));
        answer.put("checkAfterDays", rhythm.checkAfterDays())
                .put("checkHeldBy", word(rhythm.checkHeldBy()))
                .put("changeAfterDays", rhythm.changeAfterDays())
                .put("changeHeldBy", word(rhythm.changeHeldBy()))
                .put("chanceGreyAtCheck", rounded(rhythm.chanceAtCheck(), 4))
                .put("chanceGreyBetweenCheckAndChange", rounded(rhythm.chanceAfterCheck(), 4))
                .put("acceptedChance", interval.setting())
                .put("longestDays", interval.limits().capDays());
        answer.set("longestBasis", Answers.wording(interval.limits().basis()));
        answer.set("sentence", Answers.wording(interval.sentence()));
        answer.set("belief", belief(interval.prior(), unit));
        ArrayNode seen = answer.putArray("seen");
        interval.seen().stream()
                .distinct()
                .forEach(one -> seen.add(said(one, Collections.frequency(interval.seen(), one), unit)));
        ArrayNode curve = answer.putArray("curve");
        interval.curve()
                .forEach(point -> curve.add(Answers.object()
                        .put("at", rounded(unit.from(point.days()), 3))
                        .put("chanceGrey", rounded(point.chanceGrey(), 4))
                        .put("low", rounded(point.low(), 4))
                        .put("high", rounded(point.high(), 4))));
        return answer;
    }

    private static ObjectNode between(HouseholdInterval interval, SpanUnit unit) {
        return Answers.object()
                .put("shapeFrom", rounded(interval.posterior().shape(0.1), 4))
                .put("shapeTo", rounded(interval.posterior().shape(0.9), 4))
                .put("scaleFrom", rounded(unit.from(interval.posterior().scaleDays(0.1)), 3))
                .put("scaleTo", rounded(unit.from(interval.posterior().scaleDays(0.9)), 3));
    }

    private static ObjectNode belief(Prior prior, SpanUnit unit) {
        return switch (prior) {
            case Prior.Flat() -> Answers.object().put("prior", "flat");
            case Prior.Weak(double scaleDays, double scaleFactor, double shape, double shapeFactor) ->
                Answers.object()
                        .put("prior", "weak")
                        .put("scale", rounded(unit.from(scaleDays), 3))
                        .put("scaleFactor", rounded(scaleFactor, 4))
                        .put("shape", rounded(shape, 4))
                        .put("shapeFactor", rounded(shapeFactor, 4));
        };
    }

    private static ObjectNode said(Seen seen, int times, SpanUnit unit) {
        ObjectNode said = Answers.object();
        switch (seen) {
            case Seen.GreyAt(double days) -> said.put("greyAt", rounded(unit.from(days), 6));
            case Seen.GreyBetween(double cleanDays, double greyDays) ->
                said.put("cleanAt", rounded(unit.from(cleanDays), 6)).put("greyAt", rounded(unit.from(greyDays), 6));
            case Seen.CleanAt(double days) -> said.put("cleanAt", rounded(unit.from(days), 6));
        }
        return said.put("times", times);
    }

    private static String word(Rhythm.Held held) {
        return switch (held) {
            case CHANCE -> "chance";
            case MONTH -> "month";
            case LONGEST -> "longest";
        };
    }

    private static BigDecimal rounded(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_UP)
                .stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
    }
}
