package changeover.billing.documents;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Stickers for a home's filters and machines. */
public record TagSheet(
        Locale language, String business, @Nullable String phone, List<Tag> tags) {

    public TagSheet {
        tags = List.copyOf(tags);
    }

    /**
     * One sticker, 90 x 50 mm.
     *
     * @param name the machine or the thing that fits it: Filter slot, hall closet
     * @param big filter size, pad or model
     * @param air the air's direction through a filter, or a core's way up; null where there is none
     * @param facts last change, next check, serial …: at most four are printed
     * @param link what the QR code opens
     */
    public record Tag(
            String name, String big, @Nullable Air air, boolean core, List<CardSheet.Pair> facts, String link) {
        public Tag {
            facts = List.copyOf(facts);
        }
    }
}
