package changeover.web.session;

import changeover.billing.estimates.EstimateFacts;
import changeover.billing.estimates.EstimateFacts.OtherItem;
import changeover.billing.estimates.EstimateFacts.PartItem;
import changeover.billing.invoices.DraftChange;
import changeover.billing.invoices.DraftsByHand;
import changeover.billing.tax.ContractForm;
import changeover.billing.tax.Work;
import changeover.contracts.money.Money;
import changeover.contracts.words.Refusal;
import changeover.web.session.FormRows.Row;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** An estimate as it was typed: rows of parts and of lines in one's own words, of which blank ones are none. */
public final class EstimateForm {

    private static final int MOST = 20;

    /** How the price of an estimate may be agreed. */
    private static final Set<String> FORMS = Set.of(ContractForm.SEPARATE.code(), ContractForm.LUMP_SUM.code());

    private static final int MOST_MINUTES = 14_400;

    private final FormRows rows = new FormRows();
    private final Typed typed;

    public EstimateForm(Typed typed) {
        this.typed = typed;
    }

    /** @param known the codes of the parts that may be chosen */
    public EstimateFacts read(Set<String> known, Currency currency) {
        List<PartItem> parts = known.isEmpty()
                ? List.of()
                : rows.filled(typed, "part", MOST, List.of("code", "quantity")).stream()
                        .map(row -> new PartItem(
                                typed.oneOf(row.of("code"), known),
                                typed.number(row.of("quantity"), DraftChange.LEAST, DraftChange.MOST)))
                        .toList();
        List<OtherItem> others = rows.filled(typed, "other", MOST, List.of("words", "price", "quantity")).stream()
                .map(row -> new OtherItem(
                        typed.text(row.of("words"), 500),
                        typed.number(row.of("quantity"), DraftChange.LEAST, DraftChange.MOST),
                        typed.oneOf(row.of("unit"), Set.copyOf(DraftsByHand.UNITS)),
                        typed.money(row.of("price"), currency),
                        Work.of(typed.oneOf(row.of("work"), DraftsByHand.WORKS))))
                .toList();
        return new EstimateFacts(
                typed.text("words", 1000),
                typed.line("minutes", 10) == null ? 0 : typed.whole("minutes", 0, MOST_MINUTES),
                typed.ticked("trip"),
                parts,
                others,
                typed.day("validUntil"),
                typed.line("deposit", 20) == null ? null : typed.money("deposit", currency),
                typed.ticked("work") ? Work.of(typed.oneOf("work", DraftsByHand.WORKS)) : Work.REPAIR,
                typed.ticked("form") ? ContractForm.of(typed.oneOf("form", FORMS)) : ContractForm.SEPARATE);
    }

    /** What the rule says of the second part is said at the row it was typed into. */
    public List<Refusal> placed(List<Refusal> refusals) {
        return rows.placed(refusals);
    }

    public static Map<String, String> filled(EstimateFacts facts, Locale locale) {
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("words", facts.words());
        fields.put("minutes", facts.minutes() == 0 ? "" : String.valueOf(facts.minutes()));
        fields.put("trip", facts.trip() ? "yes" : "");
        fields.put("validUntil", facts.validUntil().toString());
        Money deposit = facts.deposit();
        fields.put("deposit", deposit == null ? "" : Written.of(deposit, locale));
        fields.put("work", facts.work().code());
        fields.put("form", facts.form().code());
        for (int at = 0; at < facts.parts().size(); at++) {
            Row row = Row.of("part", at);
            PartItem part = facts.parts().get(at);
            fields.put(row.of("code"), part.code());
            fields.put(row.of("quantity"), Written.of(part.quantity(), locale));
        }
        for (int at = 0; at < facts.others().size(); at++) {
            Row row = Row.of("other", at);
            OtherItem other = facts.others().get(at);
            fields.put(row.of("words"), other.words());
            fields.put(row.of("quantity"), Written.of(other.quantity(), locale));
            fields.put(row.of("unit"), other.unit());
            fields.put(row.of("price"), Written.of(other.unitPrice(), locale));
            fields.put(row.of("work"), other.work().code());
        }
        return fields;
    }

    public static List<Row> parts(Said form) {
        return FormRows.shown(form, "part", MOST);
    }

    public static List<Row> others(Said form) {
        return FormRows.shown(form, "other", MOST);
    }
}
