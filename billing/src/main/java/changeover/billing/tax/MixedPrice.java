package changeover.billing.tax;

import changeover.contracts.money.Money;
import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One price for two kinds of work is split where papers show the split; without papers a place may presume the whole price
 * to be of the second kind, once that part is above a share, and of the first kind up to it.
 *
 * @param most the share of the second kind, in percent, up to which the whole price counts as the first
 * @param source where the presumption was read
 */
public record MixedPrice(String region, BigDecimal most, String source, boolean read) {

    private static final List<MixedPrice> SHIPPED =
            ShippedRows.read("/changeover/billing/mixed-prices.json", MixedPrice::row);

    /** The presumption of a place; null where there is none, and then only the split itself counts. */
    public static @Nullable MixedPrice of(String region) {
        return SHIPPED.stream()
                .filter(row -> row.region.equals(region))
                .findFirst()
                .orElse(null);
    }

    private static MixedPrice row(JsonNode row) {
        return new MixedPrice(
                row.get("region").asText(),
                new BigDecimal(row.get("most").asText()),
                row.get("source").asText(),
                row.get("read").asBoolean());
    }

    /**
     * The price as the table is asked about it.
     *
     * @param line the whole price, as the first kind of work
     * @param second the second kind of work
     * @param part what of the price is for the second kind
     * @param documented whether papers show the split
     */
    public static List<Taxable> taxables(Taxable line, Work second, Money part, boolean documented) {
        MixedPrice place = of(line.region());
        if (documented || place == null) {
            return List.of(with(line, line.work(), line.net().minus(part)), with(line, second, part));
        }
        Money limit = line.net().percent(place.most);
        return List.of(with(line, part.compareTo(limit) > 0 ? second : line.work(), line.net()));
    }

    private static Taxable with(Taxable line, Work work, Money net) {
        return new Taxable(line.position(), line.region(), line.property(), work, line.form(), net);
    }
}
