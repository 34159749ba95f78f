package changeover.billing.tax;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.money.Money;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Random documents against a second model that knows whole numbers only: cents, and rates in thousandths of a percent. */
class DocumentTaxesModelTest {

    private static final Currency CAD = Currency.getInstance("CAD");
    private static final TaxTable TABLE = new TaxTable(ShippedTaxes.rows(), List.of());
    private static final LocalDate NOVA_SCOTIAS_CHANGE = LocalDate.of(2025, 4, 1);
    private static final List<Work> WORKS = List.of(Work.MAINTENANCE, Work.REPAIR, Work.INSTALLATION);
    private static final List<String> REGIONS = List.of(
            "CA-QC", "CA-ON", "CA-NS", "CA-NB", "CA-NL", "CA-PE", "CA-AB", "CA-BC", "CA-SK", "CA-MB", "CA-NT", "CA-NU",
            "CA-YT", "US-NY", "US-TX");

    @Test
    void every_document_is_right_to_the_cent() {
        int documents = Boolean.getBoolean("changeover.deep") ? 1_000_000 : 100_000;
        long seed = System.nanoTime();
        System.out.println("taxes seed=" + seed);
        Random random = new Random(seed);
        for (int at = 0; at < documents; at++) {
            String region = REGIONS.get(random.nextInt(REGIONS.size()));
            LocalDate day = LocalDate.of(2024, 1, 1).plusDays(random.nextInt(1200));
            PropertyUse use = random.nextBoolean() ? PropertyUse.RESIDENTIAL : PropertyUse.COMMERCIAL;
            Work work = WORKS.get(random.nextInt(WORKS.size()));
            ContractForm form = random.nextBoolean() ? ContractForm.PLAN : ContractForm.LUMP_SUM;
            List<Taxable> lines = new ArrayList<>();
            long cents = 0;
            for (int line = 1; line <= 1 + random.nextInt(8); line++) {
                long net = random.nextInt(4) == 0 ? random.nextInt(100_000_000) : random.nextInt(60_000);
                cents += net;
                lines.add(new Taxable(line, region, use, work, form, new Money(net, CAD)));
            }
            DocumentTaxes.Computed taxes = (DocumentTaxes.Computed) DocumentTaxes.of(lines, day, TABLE, false);
            List<Long> said = new ArrayList<>();
            for (TaxLine line : taxes.lines()) {
                assertEquals(cents, line.base().minor());
                said.add(line.amount().minor());
            }
            List<Long> expected =
                    rates(region, day, use, work).stream().map(each(cents)).toList();
            assertEquals(expected, said, region + " " + day + " " + cents);
        }
    }

    private static java.util.function.Function<Long, Long> each(long cents) {
        return rate -> {
            long scaled = cents * rate;
            long whole = scaled / 100_000;
            return 2 * (scaled - whole * 100_000) >= 100_000 ? whole + 1 : whole;
        };
    }

    /** In thousandths of a percent. */
    private static List<Long> rates(String region, LocalDate day, PropertyUse use, Work work) {
        return switch (region) {
            case "CA-QC" -> List.of(5_000L, 9_975L);
            case "CA-ON" -> List.of(13_000L);
            case "CA-NS" -> List.of(day.isBefore(NOVA_SCOTIAS_CHANGE) ? 15_000L : 14_000L);
            case "CA-NB", "CA-NL", "CA-PE" -> List.of(15_000L);
            case "CA-BC", "CA-MB" -> List.of(5_000L, 7_000L);
            case "CA-SK" -> List.of(5_000L, 6_000L);
            case "US-NY" -> List.of(work == Work.INSTALLATION ? 0L : 8_875L);
            case "US-TX" -> List.of(use == PropertyUse.RESIDENTIAL || work == Work.MAINTENANCE ? 0L : 8_250L);
            default -> List.of(5_000L);
        };
    }
}
