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

    /** The kind's number in UNTDID 1001, as EN 16931 writes it. */
    public String typeCode() {
        return switch (this) {
            case PLAN, VISIT -> "380";
            case DEPOSIT -> "386";
            case CREDIT -> "381";
        };
    }

    /** Invoices and credit notes are numbered apart. */
    public NumberedKind numbered() {
        return this == CREDIT ? NumberedKind.CREDIT : NumberedKind.INVOICE;
    }
}
