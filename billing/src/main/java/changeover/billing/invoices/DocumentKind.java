package changeover.billing.invoices;

import java.util.Locale;

/** What a document asks money for; a credit note gives it back. */
public enum DocumentKind {
    PLAN,
    VISIT,
    DEPOSIT,
    CREDIT;

    public static DocumentKind of(String code) {
        return valueOf(code.toUpperCase(Locale.ROOT));
    }

    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Invoices and credit notes are numbered apart. */
    public NumberedKind numbered() {
        return this == CREDIT ? NumberedKind.CREDIT : NumberedKind.INVOICE;
    }
}
