package changeover.billing.tax;

import changeover.contracts.words.Wording;
import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The dated table that comes with the product ({@code taxes.json}), each row with its source. */
public final class ShippedTaxes {

    private static final List<TaxRow> ROWS = ShippedRows.read("/changeover/billing/taxes.json", ShippedTaxes::row);

    private ShippedTaxes() {}

    public static List<TaxRow> rows() {
        return ROWS;
    }

    private static TaxRow row(JsonNode row) {
        Tax tax = new Tax(
                row.get("code").asText(),
                new Wording(row.get("en").asText(), row.get("fr").asText()),
                row.get("category").asText(),
                new BigDecimal(row.get("percent").asText()),
                row.get("region").asText(),
                null,
                row.get("source").asText(),
                row.get("read").asBoolean());
        String property = text(row, "property");
        String work = text(row, "work");
        String form = text(row, "form");
        String until = text(row, "until");
        return new TaxRow(
                tax,
                property == null ? null : PropertyUse.of(property),
                work == null ? null : Work.of(work),
                form == null ? null : ContractForm.of(form),
                LocalDate.parse(row.get("from").asText()),
                until == null ? null : LocalDate.parse(until));
    }

    private static @Nullable String text(JsonNode row, String name) {
        return row.hasNonNull(name) ? row.get(name).asText() : null;
    }
}
