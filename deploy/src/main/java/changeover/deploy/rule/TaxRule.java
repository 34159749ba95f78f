package changeover.deploy.rule;

import changeover.billing.tax.ContractForm;
import changeover.billing.tax.DocumentTaxes;
import changeover.billing.tax.MixedPrice;
import changeover.billing.tax.PropertyUse;
import changeover.billing.tax.ShippedTaxes;
import changeover.billing.tax.TaxLine;
import changeover.billing.tax.TaxTable;
import changeover.billing.tax.Taxable;
import changeover.billing.tax.Work;
import changeover.contracts.money.Money;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;

/** The taxes of a document. */
final class TaxRule implements Rule {
    @Override
    public String name() {
        return "tax";
    }

    @Override
    public String says() {
        return "Computes the taxes of a document by the place of the work and the day the tax becomes payable.";
    }

    @Override
    public String example() {
        return """
                {"region": "CA-QC", "day": "2027-03-31", "property": "residential", "currency": "CAD", "smallSupplier": false,
                 "lines": [{"amount": "249.00", "work": "maintenance", "form": "plan"}]}
                (a line may be one price for two kinds of work: "mixed": {"work": "repair", "amount": "14.94", "documented": false};
                 "read": false in the answer says that the rate is from memory: a document may carry it only once the owner has
                 confirmed it)""";
    }

    @Override
    public JsonNode answer(Question question) {
        Currency currency = question.currency();
        List<Taxable> lines = new ArrayList<>();
        int position = 0;
        for (Question line : question.oneOrMore("lines")) {
            position++;
            Taxable whole = new Taxable(
                    position,
                    line.text("region", question.text("region")),
                    PropertyUse.of(line.text("property", question.text("property", "residential"))),
                    Work.of(line.text("work", "maintenance")),
                    ContractForm.of(line.text("form", "plan")),
                    line.money("amount", currency));
            lines.addAll(line.has("mixed") ? mixed(whole, line.part("mixed"), currency) : List.of(whole));
        }
        TaxTable table = new TaxTable(ShippedTaxes.rows(), List.of());
        return switch (DocumentTaxes.of(lines, question.day("day"), table, question.yes("smallSupplier", false))) {
            case DocumentTaxes.Refused refused -> throw refused.refusal().thrown();
            case DocumentTaxes.Computed computed -> said(lines, computed, currency);
        };
    }

    private static List<Taxable> mixed(Taxable whole, Question mixed, Currency currency) {
        return MixedPrice.taxables(
                whole, Work.of(mixed.text("work")), mixed.money("amount", currency), mixed.yes("documented", false));
    }

    private static ObjectNode said(List<Taxable> lines, DocumentTaxes.Computed computed, Currency currency) {
        Money subtotal = Money.sum(lines.stream().map(Taxable::net).toList(), currency);
        Money taxes = computed.total(currency);
        ObjectNode answer = Answers.object();
        answer.put("subtotal", subtotal.decimal());
        ArrayNode all = answer.putArray("taxes");
        computed.lines().forEach(line -> all.add(said(line)));
        return answer.put("tax", taxes.decimal())
                .put("total", subtotal.plus(taxes).decimal())
                .put("currency", currency.getCurrencyCode());
    }

    private static ObjectNode said(TaxLine line) {
        ObjectNode said = Answers.object()
                .put("code", line.tax().code())
                .put("percent", line.tax().percent().stripTrailingZeros().toPlainString())
                .put("base", line.base().decimal())
                .put("amount", line.amount().decimal())
                .put("category", line.tax().category())
                .put("source", line.tax().source())
                .put("read", line.tax().read());
        return said.set("label", Answers.wording(line.tax().label()));
    }
}
