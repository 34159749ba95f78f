package changeover.billing.pricing;

import java.util.Locale;

/** What has a price: a part by its code, an hour of labour, a trip. */
public enum ItemKind {
    PART,
    LABOUR,
    TRAVEL;

    public static ItemKind of(String code) {
        return valueOf(code.toUpperCase(Locale.ROOT));
    }

    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
