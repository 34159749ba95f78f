package changeover.web.office;

import changeover.billing.documents.Places;
import changeover.billing.documents.Words;
import changeover.billing.tax.ContractForm;
import changeover.billing.tax.PropertyUse;
import changeover.billing.tax.ShippedSources;
import changeover.billing.tax.ShippedTaxes;
import changeover.billing.tax.TaxCategory;
import changeover.billing.tax.TaxRow;
import changeover.billing.tax.Work;
import changeover.web.session.Bundles;
import changeover.web.session.Frame;
import changeover.web.session.Written;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** The tax table in words. */
public record TaxRowsView(
        List<Row> rows,
        List<Choice> toConfirm,
        List<Choice> toEnd,
        List<Choice> properties,
        List<Choice> works,
        List<Choice> forms,
        List<Choice> categories) {

    /**
     * A row of the table.
     *
     * @param cases what it holds for, where that is not everything
     * @param standing whose row it is, and whether it may be on a document
     */
    public record Row(
            String place,
            String label,
            String cases,
            String from,
            String until,
            String source,
            String standing,
            boolean waits) {}

    public record Choice(String code, String words) {}

    /**
     * What a row that is not added yet makes the place charge.
     *
     * @param seen the taxes and their rates, sent back with the owner's yes to them
     */
    public record Charged(String place, String day, List<Tax> taxes, String seen) {

        static Charged of(List<TaxRow> rows, TaxRow added, Frame frame) {
            TaxRowWords words = Bundles.of(TaxRowWords.class, frame.locale());
            return new Charged(
                    TaxRowsView.place(added, frame),
                    frame.brief(added.from()),
                    rows.stream().map(row -> tax(row, frame, words)).toList(),
                    seen(rows));
        }

        static String seen(List<TaxRow> rows) {
            return rows.stream()
                    .map(row -> row.key() + " " + row.tax().percent().toPlainString())
                    .collect(Collectors.joining("; "));
        }

        private static Tax tax(TaxRow row, Frame frame, TaxRowWords words) {
            String cases = cases(row, frame);
            return new Tax(
                    row.tax().label().in(frame.locale()),
                    words.percent(Written.of(row.tax().percent(), frame.locale())),
                    cases.isEmpty() ? words.all_cases() : cases,
                    row.until() == null ? "" : words.until(frame.brief(row.until())));
        }
    }

    /** @param until its last day, in words; empty while it has none */
    public record Tax(String label, String percent, String cases, String until) {}

    static TaxRowsView of(List<TaxRow> own, List<TaxRow> shipped, LocalDate today, Frame frame) {
        TaxRowWords words = Bundles.of(TaxRowWords.class, frame.locale());
        RowsWords rows = Bundles.of(RowsWords.class, frame.locale());
        Set<String> asShipped = ShippedTaxes.rows().stream()
                .filter(row -> row.tax().read())
                .map(TaxRow::key)
                .collect(Collectors.toSet());
        List<Row> all = new ArrayList<>();
        own.forEach(row -> all.add(row(row, frame, rows.own())));
        shipped.forEach(row -> {
            boolean confirmed = row.tax().read() && !asShipped.contains(row.key());
            String standing = !row.tax().read() ? words.from_memory() : confirmed ? words.confirmed() : rows.shipped();
            all.add(row(row, frame, standing));
        });
        return new TaxRowsView(
                List.copyOf(all),
                shipped.stream()
                        .filter(row -> !row.tax().read())
                        .map(row -> new Choice(row.key(), said(row, frame, words)))
                        .toList(),
                own.stream()
                        .filter(row -> row.until() == null || !row.until().isBefore(today))
                        .map(row -> new Choice(row.key(), said(row, frame, words)))
                        .toList(),
                Arrays.stream(PropertyUse.values())
                        .map(one -> new Choice(one.code(), one.wording().in(frame.locale())))
                        .toList(),
                Arrays.stream(Work.values())
                        .map(one -> new Choice(one.code(), one.wording().in(frame.locale())))
                        .toList(),
                Arrays.stream(ContractForm.values())
                        .map(one -> new Choice(one.code(), one.wording().in(frame.locale())))
                        .toList(),
                Arrays.stream(TaxCategory.values())
                        .map(one -> new Choice(one.name(), one.wording().in(frame.locale())))
                        .toList());
    }

    private static Row row(TaxRow row, Frame frame, String standing) {
        return new Row(
                place(row, frame),
                row.tax().label().in(frame.locale()),
                cases(row, frame),
                frame.brief(row.from()),
                row.until() == null ? "" : frame.brief(row.until()),
                ShippedSources.in(frame.locale(), row.tax().source()),
                standing,
                !row.tax().read());
    }

    private static String place(TaxRow row, Frame frame) {
        return Places.region(Words.in(frame.locale()), row.tax().region());
    }

    private static String said(TaxRow row, Frame frame, TaxRowWords words) {
        String cases = cases(row, frame);
        return place(row, frame) + ", " + row.tax().label().in(frame.locale())
                + (cases.isEmpty() ? "" : " (" + cases + ")") + ", " + words.since(frame.brief(row.from()));
    }

    private static String cases(TaxRow row, Frame frame) {
        List<String> cases = new ArrayList<>();
        String named = row.cases().in(frame.locale());
        if (!named.isEmpty()) {
            cases.add(named);
        }
        TaxCategory.of(row.tax().category())
                .filter(category -> category != TaxCategory.S)
                .ifPresent(category -> cases.add(category.wording().in(frame.locale())));
        return String.join(", ", cases);
    }
}
