package changeover.billing.notices;

import java.util.List;
import java.util.UUID;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Who gets a message. Somebody without a usable mail address gets a letter.
 *
 * @param postal the lines of the address, name left out
 * @param language en or fr
 */
public record Recipient(
        @Nullable UUID customerId, String name, @Nullable String email, List<String> postal, String language) {

    /** One address, plain letters, nothing that could begin another header. */
    private static final Pattern ADDRESS =
            Pattern.compile("[A-Za-z0-9.!#$%&'*+/=?^_`{|}~-]{1,64}@[A-Za-z0-9](?:[A-Za-z0-9.-]{0,250}[A-Za-z0-9])?");

    public Recipient {
        postal = List.copyOf(postal);
    }

    public boolean hasMail() {
        return email != null && ADDRESS.matcher(email.strip()).matches();
    }

    /** The same person in the language of one document. */
    Recipient in(String documentLanguage) {
        return new Recipient(customerId, name, email, postal, documentLanguage);
    }

    String address() {
        return email == null ? "" : email.strip();
    }
}
