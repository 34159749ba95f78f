package changeover.billing.ledger;

import changeover.contracts.words.Wording;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/**
 * What the journal moves. Each tax has a role of its own beside these, {@code tax gst 123456789 RT0001}: its code and the
 * number under which it is collected.
 */
public enum AccountRole {
    RECEIVABLE(new Wording("Owed by customers", "Comptes clients")),
    DEPOSITS(new Wording("Kept for customers, deposits", "Gardé pour les clients, acomptes")),
    DEFERRED(new Wording("Plans invoiced, not yet earned", "Formules facturées, pas encore gagnées")),
    UNBILLED(new Wording("Plans earned, not yet invoiced", "Formules gagnées, pas encore facturées")),
    REVENUE_PLAN(new Wording("Revenue of plans", "Produits des formules")),
    REVENUE_VISIT(new Wording("Revenue of visits", "Produits des visites")),
    FEES(new Wording("Fees charged", "Frais facturés")),
    BAD_DEBTS(new Wording("Debts given up", "Créances radiées")),
    ROUNDING(new Wording("Cash rounding", "Arrondi du comptant")),
    CASH(new Wording("Cash", "Comptant")),
    CARD(new Wording("Card", "Carte")),
    CHEQUE(new Wording("Cheque", "Chèque")),
    TRANSFER(new Wording("Transfer", "Virement")),
    DEBIT(new Wording("Direct debit", "Prélèvement")),
    OTHER(new Wording("Other ways of paying", "Autres moyens de paiement")),
    BEFORE(new Wording("From the old books", "Repris des anciens livres"));

    /** As the roles stand in their enumeration, then the taxes. */
    static final Comparator<String> ORDER = Comparator.comparingInt(
                    (String role) -> of(role).map(Enum::ordinal).orElse(values().length))
            .thenComparing(Comparator.naturalOrder());

    /** The role of a row {@code t} of {@code invoice_tax}. */
    static final String OF_TAX = "concat_ws(' ', 'tax', t.code, coalesce(t.registration, t.region))";

    private final Wording wording;

    AccountRole(Wording wording) {
        this.wording = wording;
    }

    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public Wording wording() {
        return wording;
    }

    static Optional<AccountRole> of(String code) {
        return Arrays.stream(values()).filter(one -> one.code().equals(code)).findFirst();
    }
}
