package changeover.scheduling.stock;

import changeover.contracts.tenants.Owned;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Where parts lie: the shelf at the shop, or the van of one technician. */
@Entity
@Table(name = "stock_place")
public class StockPlace extends Owned {

    private String kind = "";
    private String name = "";

    @Column(name = "person_id")
    private @Nullable UUID personId;

    @Column(name = "closed_on")
    private @Nullable LocalDate closedOn;

    @Version
    private int version;

    public static StockPlace shelf(String name) {
        var place = new StockPlace();
        place.kind = "shelf";
        place.name = name;
        return place;
    }

    public static StockPlace vanOf(UUID personId, String name) {
        var place = new StockPlace();
        place.kind = "van";
        place.name = name;
        place.personId = personId;
        return place;
    }

    public void rename(String newName) {
        name = newName;
    }

    /** In use no longer; what moved here stays in the books. */
    void close(LocalDate day) {
        closedOn = day;
    }

    public boolean isShelf() {
        return kind.equals("shelf");
    }

    /** shelf or van. */
    public String kind() {
        return kind;
    }

    public String name() {
        return name;
    }

    public Optional<UUID> personId() {
        return Optional.ofNullable(personId);
    }

    public Optional<LocalDate> closedOn() {
        return Optional.ofNullable(closedOn);
    }

    public int version() {
        return version;
    }
}
