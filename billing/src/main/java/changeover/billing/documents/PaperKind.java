package changeover.billing.documents;

import java.util.Locale;

/** What a kept document is a paper of. */
public enum PaperKind {
    INVOICE,
    CREDIT,
    REPORT,
    OFFER,
    ESTIMATE,
    STATEMENT,
    /** Of a deposit. */
    RECEIPT,
    /** A paper of the business itself, as it was brought. */
    PAPER;

    public static PaperKind of(String code) {
        return valueOf(code.toUpperCase(Locale.ROOT));
    }

    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
