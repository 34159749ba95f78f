package changeover.contracts.customers;

import changeover.contracts.tenants.Owned;
import changeover.contracts.words.Checks;
import changeover.contracts.words.Refusal;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Something that can hurt whoever comes in stands on the card from the day it was seen until it is cleared. */
@Entity
@Table(name = "hazard")
public class Hazard extends Owned {

    /** A dog, a ladder that cannot be trusted, suspected asbestos, or what the note says. */
    public static final List<String> KINDS = List.of("dog", "ladder", "asbestos", "other");

    @Column(name = "home_id", updatable = false)
    private UUID homeId = new UUID(0, 0);

    private String kind = "other";
    private String note = "";
    private String language = "en";

    @Column(name = "seen_on")
    private LocalDate seenOn = LocalDate.EPOCH;

    @Column(name = "cleared_on")
    private @Nullable LocalDate clearedOn;

    /** @param language en or fr: the language that the note is written in */
    public static Hazard seen(UUID homeId, String kind, @Nullable String note, String language, LocalDate day) {
        var checks = new Checks();
        var hazard = new Hazard();
        hazard.homeId = homeId;
        hazard.kind = checks.oneOf("kind", kind, KINDS);
        String said = checks.note("note", note);
        hazard.note = said == null ? "" : said;
        checks.refuseIf(kind.equals("other") && said == null, "note", "text.missing");
        hazard.language = checks.oneOf("language", language, List.of("en", "fr"));
        hazard.seenOn = day;
        checks.orRefuse();
        return hazard;
    }

    /** The danger is gone. Refused before the day that it was seen. */
    public void clear(LocalDate day) {
        if (day.isBefore(seenOn)) {
            throw Refusal.of("hazard.cleared-too-early").at("clearedOn").thrown();
        }
        clearedOn = day;
    }

    public UUID homeId() {
        return homeId;
    }

    public String kind() {
        return kind;
    }

    public String note() {
        return note;
    }

    public String language() {
        return language;
    }

    public LocalDate seenOn() {
        return seenOn;
    }

    public Optional<LocalDate> clearedOn() {
        return Optional.ofNullable(clearedOn);
    }
}
