package changeover.billing.bank;

import changeover.billing.payments.Way;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * How the money of a line changed hands, as far as the bank's own word for the line says it; empty where it does not. A deposit
 * at a counter or a machine may be notes or cheques, so it says nothing.
 */
final class WayOfLine {

    private static final Pattern CHEQUE = Pattern.compile("\\b(ch[eè]ques?|checks?|chq)\\b");
    private static final Pattern CARD = Pattern.compile("\\b(cards?|cartes?|pos|visa|mastercard)\\b");
    private static final Pattern DEBIT = Pattern.compile(
            "\\b(direct debits?|pre-?authori[sz]ed|pr[eé]l[eè]vements?|d[eé]bits? pr[eé]autoris[eé]s?)\\b");
    private static final Pattern CASH = Pattern.compile("\\b(cash|comptant|esp[eè]ces)\\b");
    private static final Pattern TRANSFER =
            Pattern.compile("\\b(e-?transfers?|transfers?|virements?|direct deposits?|d[eé]p[oô]ts? directs?)\\b");

    private WayOfLine() {}

    /**
     * Open Financial Exchange, "Transaction Types used in TRNTYPE": CHECK, POS (point of sale), DIRECTDEP, DIRECTDEBIT, XFER,
     * CASH (a withdrawal of notes).
     *
     * @param numbered whether the line has the number of a cheque
     */
    static Optional<Way> ofx(String kind, boolean numbered) {
        return switch (kind.strip().toUpperCase(Locale.ROOT)) {
            case "CHECK" -> Optional.of(Way.CHEQUE);
            case "POS" -> Optional.of(Way.CARD);
            case "DIRECTDEP", "XFER" -> Optional.of(Way.TRANSFER);
            case "DIRECTDEBIT", "REPEATPMT" -> Optional.of(Way.DEBIT);
            case "CASH" -> Optional.of(Way.CASH);
            default -> numbered ? Optional.of(Way.CHEQUE) : Optional.empty();
        };
    }

    /** A bank's words in English or French; the first that is meant for certain. */
    static Optional<Way> words(String said) {
        String plain = said.toLowerCase(Locale.ROOT);
        if (CHEQUE.matcher(plain).find()) {
            return Optional.of(Way.CHEQUE);
        }
        if (DEBIT.matcher(plain).find()) {
            return Optional.of(Way.DEBIT);
        }
        if (TRANSFER.matcher(plain).find()) {
            return Optional.of(Way.TRANSFER);
        }
        if (CARD.matcher(plain).find()) {
            return Optional.of(Way.CARD);
        }
        return CASH.matcher(plain).find() ? Optional.of(Way.CASH) : Optional.empty();
    }
}
