package changeover.billing.documents;

import changeover.contracts.pictures.Picture;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Who sends the paper: name, address, how to reach them, the licence (Quebec: "Licence RBQ : 1234-5678-90", Building Act
 * s. 57.1) and the sign they use.
 *
 * @param address its lines, from the street on
 * @param licence the number alone or the whole line; a bare number is printed after the words for it
 */
public record Letterhead(
        String name,
        List<String> address,
        @Nullable String phone,
        @Nullable String email,
        @Nullable String licence,
        @Nullable Picture logo) {

    public Letterhead {
        address = List.copyOf(address);
    }

    /** {@code Licence RBQ : 1234-5678-90}, however the number was kept. */
    @Nullable
    String licenceLine(Words words) {
        if (licence == null || licence.isBlank()) {
            return null;
        }
        return Character.isDigit(licence.strip().charAt(0)) ? words.say("licence", "number", licence.strip()) : licence;
    }
}
