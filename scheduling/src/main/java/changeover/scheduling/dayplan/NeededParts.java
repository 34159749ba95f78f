package changeover.scheduling.dayplan;

import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.Parts;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What is used up, as the parts that the business carries.
 *
 * @param quantities by the part's code
 * @param notCarried of what no part fits
 */
public record NeededParts(Map<String, BigDecimal> quantities, List<DayPlan.Load> notCarried) {

    public static NeededParts of(List<DayPlan.Load> loads, List<KnownPart> carried) {
        Map<String, BigDecimal> quantities = new TreeMap<>();
        List<DayPlan.Load> notCarried = new ArrayList<>();
        for (DayPlan.Load load : loads) {
            Parts.fitting(carried, load.partKind(), load.size())
                    .ifPresentOrElse(
                            part -> quantities.merge(part.code(), load.quantity(), BigDecimal::add),
                            () -> notCarried.add(load));
        }
        return new NeededParts(quantities, List.copyOf(notCarried));
    }
}
