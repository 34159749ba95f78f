package changeover.web.office;

import changeover.scheduling.closeout.DaySheet;
import changeover.scheduling.closeout.Ids;
import changeover.scheduling.closeout.Operation;
import changeover.web.session.Typed;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * The parts of a visit as a correction says them: another quantity of one that stands, and one that was forgotten.
 *
 * @param said what stands on the visit's sheet
 * @param cameFrom where the part of an operation was taken from; null where that place is no more
 */
record CorrectedParts(List<DaySheet.Said> said, Function<UUID, @Nullable UUID> cameFrom) {

    private static final int LINE = 200;
    private static final BigDecimal LEAST = new BigDecimal("0.0001");
    private static final BigDecimal MOST = new BigDecimal("9999");
    private static final Set<String> WHY = Set.of("plan", "repair", "extra", "warranty");

    static String quantity(UUID operation) {
        return "quantity." + operation;
    }

    List<DaySheet.Said> standing() {
        return said.stream().filter(one -> one.kind().equals("part")).toList();
    }

    void known(Map<String, String> known) {
        standing().forEach(part -> known.put(quantity(part.id()), plain(AmendmentForm.text(part, "quantity"))));
        known.put("used", "1");
    }

    private static String plain(String number) {
        return new BigDecimal(number).stripTrailingZeros().toPlainString();
    }

    void read(Typed typed, Map<String, String> known, CorrectionTold told) {
        List<String> back = typed.each("back");
        for (DaySheet.Said part : standing()) {
            String field = quantity(part.id());
            if (!back.contains(part.id().toString())
                    && typed.asTyped().containsKey(field)
                    && AmendmentForm.otherwise(typed, known, field)) {
                another(typed, part, field, told);
            }
        }
        forgotten(typed, told);
    }

    /** The same part from the same place, another quantity of it. */
    private void another(Typed typed, DaySheet.Said part, String field, CorrectionTold told) {
        BigDecimal quantity = typed.number(field, LEAST, MOST);
        if (quantity.compareTo(new BigDecimal(AmendmentForm.text(part, "quantity"))) == 0) {
            return;
        }
        UnaryOperator<String> at = member -> member.equals("short") ? member : field;
        String why = typed.line("short", LINE);
        String stood = AmendmentForm.text(part, "short");
        told.add(new Operation.TakeBack(part.id()), at);
        told.add(
                new Operation.PartTaken(
                        AmendmentForm.text(part, "part"),
                        quantity,
                        cameFrom.apply(part.id()),
                        Ids.read(AmendmentForm.text(part, "equipment")).orElse(null),
                        AmendmentForm.text(part, "why"),
                        why != null ? why : orNull(stood),
                        orNull(AmendmentForm.text(part, "oldSerial")),
                        orNull(AmendmentForm.text(part, "newSerial"))),
                at);
    }

    private static @Nullable String orNull(String said) {
        return said.isEmpty() ? null : said;
    }

    private static void forgotten(Typed typed, CorrectionTold told) {
        String part = typed.line("taken", LINE);
        if (part != null) {
            told.add(
                    new Operation.PartTaken(
                            part,
                            typed.number("used", LEAST, MOST),
                            typed.idOrNone("place"),
                            typed.idOrNone("partMachine"),
                            typed.oneOf("partWhy", WHY),
                            typed.line("short", LINE)),
                    CorrectedParts::field);
        }
    }

    private static String field(String member) {
        return switch (member) {
            case "quantity" -> "used";
            case "equipment" -> "partMachine";
            case "why" -> "partWhy";
            case "place", "short" -> member;
            default -> "taken";
        };
    }
}
