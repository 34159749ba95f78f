package changeover.billing.documents;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;

/**
 * A line is taxed when some of a tax above no percent lies on it: what is exempt or outside of a tax stands in a row of that tax at no
 * percent and bears none.
 */
record TaxedLines(List<Row> taxes) {

    /** @param lines the positions that the tax lies on */
    record Row(BigDecimal percent, Collection<Integer> lines) {}

    boolean has(int position) {
        return charged().stream().anyMatch(tax -> tax.lines().contains(position));
    }

    /** Whether a tax lies on some of these and not on the others. */
    boolean differ(List<Integer> positions) {
        return charged().stream().anyMatch(tax -> !tax.lines().containsAll(positions));
    }

    private List<Row> charged() {
        return taxes.stream().filter(tax -> tax.percent().signum() > 0).toList();
    }
}
