package changeover.web.session;

import changeover.contracts.tenants.Owned;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.LocalDate;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A calendar reads the visits of one technician or of one home until its link is taken back. */
@Entity
@Table(name = "calendar_link")
public class CalendarLink extends Owned {

    @Column(name = "technician_id", updatable = false)
    private @Nullable UUID technicianId;

    @Column(name = "home_id", updatable = false)
    private @Nullable UUID homeId;

    @Column(updatable = false)
    private String language = "en";

    @Column(name = "secret_digest", updatable = false)
    private byte[] secretDigest = new byte[0];

    @Column(name = "made_on", updatable = false)
    private LocalDate madeOn = LocalDate.EPOCH;

    @Column(name = "revoked_on")
    private @Nullable LocalDate revokedOn;

    static CalendarLink of(CalendarOf whose, String language, byte[] digest, LocalDate day) {
        var link = new CalendarLink();
        switch (whose) {
            case CalendarOf.Technician(UUID person) -> link.technicianId = person;
            case CalendarOf.Household(UUID home) -> link.homeId = home;
        }
        link.language = language;
        link.secretDigest = digest.clone();
        link.madeOn = day;
        return link;
    }

    void revoke(LocalDate day) {
        revokedOn = day;
    }

    /** Whose visits it reads. */
    public CalendarOf whose() {
        return technicianId == null
                ? new CalendarOf.Household(Objects.requireNonNull(homeId))
                : new CalendarOf.Technician(technicianId);
    }

    /** {@code en} or {@code fr}. */
    public String language() {
        return language;
    }

    public LocalDate madeOn() {
        return madeOn;
    }
}
