package changeover.scheduling.supply;

import changeover.contracts.tenants.Today;
import changeover.scheduling.stock.Held;
import changeover.scheduling.stock.StockLists;
import changeover.scheduling.stock.StockPlace;
import changeover.scheduling.stock.StockPlaces;
import changeover.scheduling.stock.Supplies;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The year's need of each part against what lies on the shelf and in the vans: what is to buy in a middling year, and in a hard one. */
@ApplicationScoped
public class SupplyAgainstStock {

    @Inject
    Supply supply;

    @Inject
    Supplies supplies;

    @Inject
    StockPlaces places;

    @Inject
    StockLists stock;

    @Inject
    Today today;

    /**
     * A part of the year.
     *
     * @param supplier empty where nobody wrote one
     * @param held at every place together today
     * @param toBuy in the middle of the years that may come
     * @param toBuyAtMost enough in nine years of ten
     */
    public record Part(
            YearsSupply.Line line, String supplier, BigDecimal held, BigDecimal toBuy, BigDecimal toBuyAtMost) {}

    public record Seen(YearsSupply supply, List<Part> parts) {}

    /** The year from a day on; stock is what lies there today. */
    public Seen of(LocalDate day) {
        YearsSupply year = supply.of(day);
        Map<String, String> suppliers = supplies.suppliers();
        Map<String, BigDecimal> held =
                stock
                        .held(
                                today.day(),
                                places.all().stream().map(StockPlace::id).toList(),
                                null)
                        .stream()
                        .collect(Collectors.toMap(Held::partCode, Held::quantity, BigDecimal::add));
        return new Seen(
                year,
                year.lines().stream().map(line -> part(line, suppliers, held)).toList());
    }

    private static Part part(YearsSupply.Line line, Map<String, String> suppliers, Map<String, BigDecimal> held) {
        String code = line.partCode() == null ? "" : line.partCode();
        BigDecimal there = held.getOrDefault(code, BigDecimal.ZERO);
        return new Part(
                line,
                suppliers.getOrDefault(code, ""),
                there,
                lacking(line.need().year().middle(), there),
                lacking(line.need().year().high(), there));
    }

    private static BigDecimal lacking(BigDecimal needed, BigDecimal there) {
        return needed.subtract(there.max(BigDecimal.ZERO)).max(BigDecimal.ZERO);
    }
}
