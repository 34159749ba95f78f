package changeover.billing.invoices;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What becomes of a draft's lines when its visit is amended: what the product reckoned is written anew; what a person
 * wrote stays as they wrote it, and what a person took off stays off. A person's line answers the visit's line of the same
 * kind, item and coverage, so that nothing is charged twice, and is marked when the visit now says otherwise there.
 *
 * @param fresh the visit's lines that no person has touched
 * @param kept a person's lines, each with what the visit now gives in its place; none where it gives nothing there
 */
record Following(List<DraftLine> fresh, List<Kept> kept) {

    record Kept(Reckoned line, Optional<DraftLine> now) {

        boolean visitChanged() {
            return now.map(one -> !line.saysTheSame(one)).orElse(line.minor() != null);
        }
    }

    /** @param hands the lines of the visit that a person changed or took off */
    static Following of(List<Reckoned> hands, List<DraftLine> anew) {
        List<DraftLine> fresh = new ArrayList<>(anew);
        List<Kept> kept = new ArrayList<>();
        for (Reckoned line : hands) {
            Optional<DraftLine> now = fresh.stream().filter(line::isOf).findFirst();
            now.ifPresent(fresh::remove);
            kept.add(new Kept(line, now));
        }
        return new Following(List.copyOf(fresh), List.copyOf(kept));
    }
}
