package changeover.billing.tax;

import java.util.Locale;

/** How the price was agreed: a plan for a term, parts and labour stated apart, or one sum for everything. */
public enum ContractForm {
    PLAN,
    SEPARATE,
    LUMP_SUM;

    public static ContractForm of(String code) {
        return valueOf(code.toUpperCase(Locale.ROOT));
    }

    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
