package changeover.billing.invoices;

import java.util.Locale;

/** Invoices count one way, credit notes another, and estimates, which owe nothing, a third. */
public enum NumberedKind {
    INVOICE("F-{year}-{number:4}", "INV-{year}-{number:4}"),
    CREDIT("NC-{year}-{number:4}", "CN-{year}-{number:4}"),
    ESTIMATE("E-{year}-{number:4}", "EST-{year}-{number:4}");

    private final String french;
    private final String english;

    NumberedKind(String french, String english) {
        this.french = french;
        this.english = english;
    }

    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The way of writing numbers while the business has chosen none. */
    public SeriesPattern usual(String language) {
        return SeriesPattern.of("fr".equals(language) ? french : english);
    }
}
