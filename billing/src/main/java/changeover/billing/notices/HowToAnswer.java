package changeover.billing.notices;

import changeover.contracts.words.Wording;
import org.jspecify.annotations.Nullable;

/** A message is answered by a message, a letter by telephone, or in writing where the business gives no number. */
record HowToAnswer(@Nullable String phone) {

    /** Where a message's words leave the way of answering open. */
    private static final String PLACE = "{answer}";

    private static final Wording MAIL = new Wording("Answer this message.", "Répondez à ce message.");
    private static final Wording CALL = new Wording("Call us at {phone}.", "Appelez-nous au {phone}.");
    private static final Wording WRITE = new Wording(
            "Write to us at the address at the top of this letter.",
            "Écrivez-nous à l’adresse en haut de cette lettre.");

    String filled(String body, Recipient to) {
        return body.replace(
                PLACE, words(to).in(to.language()).replace("{phone}", phone == null ? "" : OneLine.of(phone)));
    }

    private Wording words(Recipient to) {
        if (to.hasMail()) {
            return MAIL;
        }
        return phone == null || phone.isBlank() ? WRITE : CALL;
    }
}
