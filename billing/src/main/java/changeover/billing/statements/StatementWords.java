package changeover.billing.statements;

import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import java.util.Locale;

/** What a statement comes to, in a sentence. */
final class StatementWords {

    private static final Wording TO_PAY = new Wording("{amount} is still to be paid.", "Il reste à payer {amount}.");
    private static final Wording NOTHING = new Wording("Nothing is to be paid.", "Rien n’est à payer.");
    private static final Wording CREDIT = new Wording("We keep {amount} for you.", "Nous gardons {amount} pour vous.");
    private static final Wording DEPOSITS = new Wording(
            " A deposit of {amount} is kept for work to come.",
            " Un acompte de {amount} est gardé pour des travaux à venir.");

    private StatementWords() {}

    static String stands(Money closing, Locale locale) {
        Wording words = closing.isPositive() ? TO_PAY : closing.isZero() ? NOTHING : CREDIT;
        return filled(words, closing.isNegative() ? closing.negated() : closing, locale);
    }

    /** Nothing where no deposit is kept. */
    static String kept(Money deposits, Locale locale) {
        return deposits.isZero() ? "" : filled(DEPOSITS, deposits, locale);
    }

    private static String filled(Wording words, Money amount, Locale locale) {
        return words.in(locale).replace("{amount}", amount.format(locale));
    }
}
