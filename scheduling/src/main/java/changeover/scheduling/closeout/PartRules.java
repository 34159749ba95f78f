package changeover.scheduling.closeout;

import changeover.contracts.words.Refusal;
import changeover.scheduling.closeout.Operation.Close;
import changeover.scheduling.closeout.Operation.PartTaken;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/**
 * A part comes from a place of the shop; more than the place holds only with a named reason, asked again at closing.
 *
 * @param booked the sheet whose parts have left their places already: the closed one that is corrected, else a blank one
 */
record PartRules(Surroundings shop, Sheet booked) {

    List<Refusal> refusals(Sheet sheet, PartTaken part) {
        List<Refusal> refusals = new ArrayList<>();
        if (!shop.knowsPart(part.part())) {
            refusals.addAll(SheetRules.refused("part-not-found", "part"));
        }
        UUID place = shop.place(part.place()).orElse(null);
        if (place == null) {
            refusals.addAll(SheetRules.refused(part.place() == null ? "no-van" : "place-not-found", "place"));
        } else if (refusals.isEmpty() && part.shortWhy() == null) {
            BigDecimal held = held(sheet, place, part.part());
            if (held.compareTo(part.quantity()) < 0) {
                BigDecimal left = held.max(BigDecimal.ZERO).stripTrailingZeros();
                refusals.add(Refusal.of("stock.short", Map.of("part", part.part(), "held", left))
                        .at("short"));
            }
        }
        return refusals;
    }

    List<Refusal> toClose(Sheet sheet, Close close) {
        if (close.shortWhy() != null) {
            return List.of();
        }
        return sheet.each(PartTaken.class, (_, part) -> part).stream()
                .filter(part -> part.shortWhy() == null)
                .filter(part -> shop.place(part.place())
                        .filter(place -> isShort(sheet, place, part))
                        .isPresent())
                .map(part -> Refusal.of("closeout.short-at-close", Map.of("part", part.part()))
                        .at("short"))
                .distinct()
                .toList();
    }

    private boolean isShort(Sheet sheet, UUID place, PartTaken part) {
        return held(sheet, place, part.part()).signum() < 0;
    }

    /** What the place holds once the sheet's parts have left it; those that are booked have left its sum already. */
    private BigDecimal held(Sheet sheet, UUID place, String part) {
        return shop.onHand(place, part).add(from(booked, place, part)).subtract(from(sheet, place, part));
    }

    private BigDecimal from(Sheet sheet, UUID place, String part) {
        return sheet.each(PartTaken.class, (_, taken) -> taken).stream()
                .filter(taken -> taken.part().equals(part))
                .filter(taken -> shop.place(taken.place()).filter(place::equals).isPresent())
                .map(PartTaken::quantity)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
