package changeover.web.office;

import changeover.billing.documents.Places;
import changeover.billing.documents.Words;
import changeover.billing.tax.ContractForm;
import changeover.billing.tax.PropertyUse;
import changeover.billing.tax.ShippedTaxes;
import changeover.billing.tax.TaxCategory;
import changeover.billing.tax.TaxRow;
import changeover.billing.tax.Work;
import changeover.web.session.Bundles;
import changeover.web.session.Frame;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** The tax table in words. */
public record TaxRowsView(
        List<Row> rows,
        List<Choice> toConfirm,
        List<Choice> properties,
        List<Choice> works,
        List<Choice> forms,
        List<Choice> categories) {

    /**
     * A row of the table.
     *
     * @param cases what it holds for, where that is not everything
     * @param standing whose row it is, and whether it may be on a document
     * @param words whether the source is in the owner's words, not in ours
     */
    public record Row(
            String place,
            String label,
            String cases,
            String from,
            String until,
            String source,
            String standing,
            boolean waits,
            boolean words) {}

    public record Choice(String code, String words) {}

    static TaxRowsView of(List<TaxRow> own, List<TaxRow> shipped, Frame frame) {
        TaxRowWords words = Bundles.of(TaxRowWords.class, frame.locale());
        RowsWords rows = Bundles.of(RowsWords.class, frame.locale());
        Set<String> asShipped = ShippedTaxes.rows().stream()
                .filter(row -> row.tax().read())
                .map(TaxRow::key)
                .collect(Collectors.toSet());
        List<Row> all = new ArrayList<>();
        own.forEach(row -> all.add(row(row, frame, words, rows.own(), true)));
        shipped.forEach(row -> {
            boolean confirmed = row.tax().read() && !asShipped.contains(row.key());
            String standing = !row.tax().read() ? words.from_memory() : confirmed ? words.confirmed() : rows.shipped();
            all.add(row(row, frame, words, standing, confirmed));
        });
        return new TaxRowsView(
                List.copyOf(all),
                shipped.stream()
                        .filter(row -> !row.tax().read())
                        .map(row -> new Choice(row.key(), said(row, frame, words)))
                        .toList(),
                Arrays.stream(PropertyUse.values())
                        .map(one -> new Choice(one.code(), property(one, words)))
                        .toList(),
                Arrays.stream(Work.values())
                        .map(one -> new Choice(one.code(), work(one, words)))
                        .toList(),
                Arrays.stream(ContractForm.values())
                        .map(one -> new Choice(one.code(), form(one, words)))
                        .toList(),
                Arrays.stream(TaxCategory.values())
                        .map(one -> new Choice(one.name(), one.wording().in(frame.locale())))
                        .toList());
    }

    private static Row row(TaxRow row, Frame frame, TaxRowWords words, String standing, boolean ownWords) {
        return new Row(
                place(row, frame),
                row.tax().label().in(frame.locale()),
                cases(row, frame, words),
                frame.brief(row.from()),
                row.until() == null ? "" : frame.brief(row.until()),
                row.tax().source(),
                standing,
                !row.tax().read(),
                ownWords);
    }

    private static String place(TaxRow row, Frame frame) {
        return Places.region(Words.in(frame.locale()), row.tax().region());
    }

    private static String said(TaxRow row, Frame frame, TaxRowWords words) {
        String cases = cases(row, frame, words);
        return place(row, frame) + ", " + row.tax().label().in(frame.locale())
                + (cases.isEmpty() ? "" : " (" + cases + ")") + ", " + words.since(frame.brief(row.from()));
    }

    private static String cases(TaxRow row, Frame frame, TaxRowWords words) {
        List<String> cases = new ArrayList<>();
        if (row.property() != null) {
            cases.add(property(row.property(), words));
        }
        if (row.work() != null) {
            cases.add(work(row.work(), words));
        }
        if (row.form() != null) {
            cases.add(form(row.form(), words));
        }
        TaxCategory.of(row.tax().category())
                .filter(category -> category != TaxCategory.S)
                .ifPresent(category -> cases.add(category.wording().in(frame.locale())));
        return String.join(", ", cases);
    }

    private static String property(PropertyUse use, TaxRowWords words) {
        return switch (use) {
            case RESIDENTIAL -> words.residential();
            case COMMERCIAL -> words.commercial();
        };
    }

    private static String work(Work work, TaxRowWords words) {
        return switch (work) {
            case MAINTENANCE -> words.maintenance();
            case REPAIR -> words.repair();
            case INSTALLATION -> words.installation();
            case FEE -> words.fee();
        };
    }

    private static String form(ContractForm form, TaxRowWords words) {
        return switch (form) {
            case PLAN -> words.plan();
            case SEPARATE -> words.separate();
            case LUMP_SUM -> words.lump_sum();
        };
    }
}
