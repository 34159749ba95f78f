package changeover.web.office;

import changeover.billing.invoices.DocumentKind;
import changeover.billing.invoices.DraftByHand;
import changeover.billing.invoices.DraftChange;
import changeover.billing.invoices.DraftsByHand;
import changeover.billing.tax.ContractForm;
import changeover.billing.tax.Work;
import changeover.contracts.money.Money;
import changeover.web.session.Said;
import changeover.web.session.Typed;
import changeover.web.session.Written;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The fields of a draft: up to six a line, named by the line itself, so that a line that moved keeps its own. */
final class DraftForm {

    static final int LONGEST_LINE = 500;

    private DraftForm() {}

    static String field(String what, DraftByHand.Line line) {
        return what + "-" + line.id();
    }

    /** A field that the form did not have leaves its line as it is. */
    static DraftChange read(Typed typed, DraftByHand draft) {
        List<DraftChange.Kept> kept = new ArrayList<>();
        Map<String, List<String>> fields = typed.asTyped();
        for (DraftByHand.Line line : draft.lines()) {
            if (typed.ticked(field("off", line))) {
                continue;
            }
            String words = field("words", line);
            String quantity = field("quantity", line);
            String price = field("price", line);
            boolean priceAsked = fields.containsKey(price) && (line.unitPrice() != null || !isBlank(fields, price));
            kept.add(new DraftChange.Kept(
                    line.position(),
                    fields.containsKey(words) ? typed.text(words, LONGEST_LINE) : null,
                    fields.containsKey(quantity) ? counted(typed, quantity) : null,
                    priceAsked ? typed.money(price, draft.currency()) : null,
                    price,
                    fields.containsKey(field("work", line)) ? work(typed, field("work", line), line) : null,
                    fields.containsKey(field("form", line)) ? form(typed, field("form", line)) : null,
                    typed.line(field("french", line), LONGEST_LINE)));
        }
        return new DraftChange(kept, added(typed, fields, draft), terms(typed, draft));
    }

    private static List<DraftChange.Added> added(Typed typed, Map<String, List<String>> fields, DraftByHand draft) {
        if (isBlank(fields, "words") && isBlank(fields, "quantity") && isBlank(fields, "price")) {
            return List.of();
        }
        return List.of(new DraftChange.Added(
                typed.text("words", LONGEST_LINE),
                counted(typed, "quantity"),
                typed.oneOf("unit", Set.copyOf(DraftsByHand.UNITS)),
                typed.money("price", draft.currency()),
                work(typed, "work", null),
                fields.containsKey("form") ? form(typed, "form") : ContractForm.SEPARATE,
                typed.line("french", LONGEST_LINE),
                "price"));
    }

    /** A fee stays one, and nothing else becomes one. */
    private static Work work(Typed typed, String field, DraftByHand.@Nullable Line line) {
        return Work.of(typed.oneOf(field, works(line).stream().map(Work::code).collect(Collectors.toSet())));
    }

    private static ContractForm form(Typed typed, String field) {
        return ContractForm.of(typed.oneOf(field, DraftsByHand.FORMS));
    }

    static List<Work> works(DraftByHand.@Nullable Line line) {
        return line != null && line.work() == Work.FEE
                ? List.of(Work.FEE)
                : List.of(Work.MAINTENANCE, Work.REPAIR, Work.INSTALLATION);
    }

    private static DraftChange.@Nullable Terms terms(Typed typed, DraftByHand draft) {
        boolean credit = draft.kind() == DocumentKind.CREDIT;
        LocalDate from = typed.day("mayIssueFrom");
        int days = credit ? draft.dueDays() : typed.whole("dueDays", 0, 365);
        return new DraftChange.Terms(from, typed.line("purchaseOrder", 60), days);
    }

    private static BigDecimal counted(Typed typed, String field) {
        return typed.number(field, DraftChange.LEAST, DraftChange.MOST);
    }

    private static boolean isBlank(Map<String, List<String>> fields, String field) {
        return fields.getOrDefault(field, List.of()).stream().allMatch(String::isBlank);
    }

    /** As it stands; figures as the reader writes them. */
    static Said filled(DraftByHand draft, Locale locale) {
        Map<String, String> fields = new LinkedHashMap<>();
        for (DraftByHand.Line line : draft.lines()) {
            fields.put(field("words", line), line.words());
            fields.put(field("french", line), line.french());
            fields.put(field("quantity", line), Written.of(line.quantity(), locale));
            fields.put(field("price", line), amount(line.unitPrice(), locale));
            fields.put(field("work", line), line.work().code());
            fields.put(field("form", line), line.form().code());
        }
        fields.put("unit", "C62");
        fields.put("work", draft.kind() == DocumentKind.PLAN ? "maintenance" : "repair");
        fields.put("form", "separate");
        fields.put("mayIssueFrom", draft.mayIssueFrom().toString());
        fields.put("dueDays", String.valueOf(draft.dueDays()));
        fields.put("purchaseOrder", draft.purchaseOrder() == null ? "" : draft.purchaseOrder());
        return Said.filled(fields);
    }

    /** What was typed for lines that the draft no longer has, each in one row. */
    static List<String> lost(Said form, DraftByHand draft) {
        Set<String> known =
                draft.lines().stream().map(line -> field("words", line)).collect(Collectors.toSet());
        return form.values().keySet().stream()
                .filter(field -> field.startsWith("words-") && !known.contains(field))
                .map(field -> field.substring("words-".length()))
                .sorted()
                .map(line -> Stream.of("quantity-", "words-", "price-")
                        .map(what -> form.value(what + line).strip())
                        .filter(text -> !text.isEmpty())
                        .collect(Collectors.joining(" · ")))
                .filter(text -> !text.isEmpty())
                .toList();
    }

    private static String amount(@Nullable Money price, Locale locale) {
        return price == null ? "" : Written.of(price, locale);
    }
}
