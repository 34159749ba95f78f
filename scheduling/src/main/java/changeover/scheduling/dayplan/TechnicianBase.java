package changeover.scheduling.dayplan;

import changeover.contracts.tenants.Owned;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.math.BigDecimal;
import java.util.UUID;

/** A technician's day begins and ends at one place, with a lunch of so many minutes in it. */
@Entity
@Table(name = "technician_base")
public class TechnicianBase extends Owned {

    @Column(name = "person_id", updatable = false)
    private UUID personId = new UUID(0, 0);

    private String address = "";
    private BigDecimal latitude = BigDecimal.ZERO;
    private BigDecimal longitude = BigDecimal.ZERO;

    @Column(name = "lunch_minutes")
    private int lunchMinutes = TechnicianBases.USUAL_LUNCH;

    @Version
    private int version;

    /**
     * What is written about it.
     *
     * @param latitude degrees north
     * @param longitude degrees east
     * @param lunchMinutes nought where none is kept
     */
    public record Facts(String address, BigDecimal latitude, BigDecimal longitude, int lunchMinutes) {}

    static TechnicianBase of(UUID personId, Facts facts) {
        var base = new TechnicianBase();
        base.personId = personId;
        base.rewrite(facts);
        return base;
    }

    void rewrite(Facts facts) {
        address = facts.address();
        latitude = facts.latitude();
        longitude = facts.longitude();
        lunchMinutes = facts.lunchMinutes();
    }

    public UUID personId() {
        return personId;
    }

    public Facts facts() {
        return new Facts(address, latitude, longitude, lunchMinutes);
    }

    public int version() {
        return version;
    }
}
