package changeover.web.api;

import changeover.contracts.words.OurAge;
import changeover.contracts.words.Refusal;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;

/** A moment in a document, with its offset from Greenwich: of our times, as far as a business looks back or ahead. */
final class AskedInstant {

    private AskedInstant() {}

    /** Null when the member is missing, and when it is not understood, which is then refused. */
    static @Nullable Instant of(Asked asked, String member) {
        String said = asked.line(member, 60);
        if (said == null) {
            return null;
        }
        try {
            OffsetDateTime at = OffsetDateTime.parse(said);
            if (at.getYear() >= OurAge.FIRST && at.getYear() <= OurAge.LAST) {
                return at.toInstant();
            }
        } catch (DateTimeException notAnInstant) {
            // said below, as for a year that nobody remembers
        }
        asked.refuse(Refusal.of("typed.instant").at(asked.path() + member));
        return null;
    }
}
