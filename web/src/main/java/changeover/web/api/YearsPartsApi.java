package changeover.web.api;

import changeover.contracts.tenants.Today;
import changeover.contracts.words.Wording;
import changeover.scheduling.supply.Range;
import changeover.scheduling.supply.SupplyAgainstStock;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What the coming year will use up, by part and month, with the range in which eight years of ten lie. */
@Path("/api/v1/{slug}/parts/year")
@RolesAllowed({"owner", "office"})
public class YearsPartsApi {

    /** @param until first day after the year */
    public record YearDocument(
            LocalDate from, LocalDate until, List<PartDocument> parts, List<UnknownDocument> unknown) {}

    /**
     * @param part the business's own part that fits; null where it carries none
     * @param toBuy in the middle of the years that may come, less what lies in stock
     * @param toBuyAtMost enough in nine years of ten
     */
    public record PartDocument(
            String kind,
            Wording name,
            String unit,
            @Nullable String size,
            @Nullable String part,
            String supplier,
            int homes,
            RangeDocument year,
            BigDecimal held,
            BigDecimal toBuy,
            BigDecimal toBuyAtMost,
            List<MonthDocument> months) {}

    public record RangeDocument(BigDecimal low, BigDecimal middle, BigDecimal high) {}

    public record MonthDocument(String month, BigDecimal low, BigDecimal middle, BigDecimal high) {}

    public record UnknownDocument(Wording task, Wording part) {}

    @Inject
    SupplyAgainstStock years;

    @Inject
    Today today;

    @GET
    @Transactional
    public YearDocument year() {
        SupplyAgainstStock.Seen seen = years.of(today.day());
        return new YearDocument(
                seen.supply().year().from(),
                seen.supply().year().until(),
                seen.parts().stream().map(YearsPartsApi::document).toList(),
                seen.supply().unknown().stream()
                        .map(one -> new UnknownDocument(one.task(), one.part()))
                        .toList());
    }

    private static PartDocument document(SupplyAgainstStock.Part part) {
        var line = part.line();
        Range year = line.need().year();
        return new PartDocument(
                line.kind(),
                line.part(),
                line.unit(),
                line.size(),
                line.partCode(),
                part.supplier(),
                line.homes(),
                new RangeDocument(year.low(), year.middle(), year.high()),
                part.held(),
                part.toBuy(),
                part.toBuyAtMost(),
                line.need().months().entrySet().stream()
                        .map(month -> new MonthDocument(
                                month.getKey().toString(),
                                month.getValue().low(),
                                month.getValue().middle(),
                                month.getValue().high()))
                        .toList());
    }
}
