package changeover.contracts.customers;

import changeover.contracts.tenants.Ids;
import changeover.contracts.tenants.OwnedWithGivenId;
import changeover.contracts.words.Checks;
import changeover.contracts.words.FilledOn;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refused;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;

/**
 * One machine, in a home or common to a building, with what its plate says and what fits it. What the names in
 * {@code fits} and {@code nameplate} may be, its kind declares.
 */
@Entity
@Table(name = "equipment")
public class Equipment extends OwnedWithGivenId {

    @Column(name = "home_id", updatable = false)
    private @Nullable UUID homeId;

    @Column(name = "building_id", updatable = false)
    private @Nullable UUID buildingId;

    @Column(name = "owner_customer_id")
    private @Nullable UUID ownerId;

    private String kind = "";
    private String name = "";
    private @Nullable String make;
    private @Nullable String model;
    private @Nullable String serial;
    private @Nullable String location;

    @Column(name = "installed_on")
    private @Nullable LocalDate installedOn;

    @Column(name = "installed_by")
    private @Nullable String installedBy;

    @Column(name = "maker_warranty_until")
    private @Nullable LocalDate makerWarrantyUntil;

    @Column(name = "labour_warranty_until")
    private @Nullable LocalDate labourWarrantyUntil;

    private @Nullable String registration;

    @JdbcTypeCode(SqlTypes.JSON)
    private Map<String, String> fits = new LinkedHashMap<>();

    @JdbcTypeCode(SqlTypes.JSON)
    private Map<String, String> nameplate = new LinkedHashMap<>();

    @Column(name = "ended_on")
    private @Nullable LocalDate endedOn;

    @Column(name = "follows_id")
    private @Nullable UUID followsId;

    private int position;

    @Version
    private int version;

    /**
     * What is known of a machine.
     *
     * @param ownerId the customer who owns it, missing when that is who signs for the home
     * @param kind a code of the catalogue
     * @param name what people call it; one machine of a name at a time in a home
     * @param labourWarrantyUntil the last day on which the installer works on it for nothing
     * @param registration the number of its registration with the maker
     */
    public record Facts(
            @Nullable UUID ownerId,
            String kind,
            String name,
            @Nullable String make,
            @Nullable String model,
            @Nullable String serial,
            @Nullable String location,
            @Nullable LocalDate installedOn,
            @Nullable String installedBy,
            @Nullable LocalDate makerWarrantyUntil,
            @Nullable LocalDate labourWarrantyUntil,
            @Nullable String registration,
            Map<String, String> fits,
            Map<String, String> nameplate) {}

    /** For Hibernate, which fills the fields afterwards. */
    protected Equipment() {}

    private Equipment(UUID id) {
        super(id);
    }

    static Equipment inHome(UUID id, UUID homeId, Facts facts, int position) {
        var unit = new Equipment(id);
        unit.homeId = homeId;
        unit.position = position;
        unit.say(facts);
        return unit;
    }

    static Equipment inBuilding(UUID buildingId, Facts facts, int position) {
        var unit = new Equipment(Ids.next());
        unit.buildingId = buildingId;
        unit.position = position;
        unit.say(facts);
        return unit;
    }

    /** Everything that may not be written of a machine, whatever its kind; empty when all is well. */
    static List<Refusal> refusals(Facts facts) {
        try {
            new Equipment().say(facts);
            return List.of();
        } catch (Refused refused) {
            return refused.refusals();
        }
    }

    /** Writes the machine's facts anew. Refused when somebody else did so since the form was filled. */
    void rewrite(Facts facts, FilledOn form) {
        form.mustBe(version);
        say(facts);
    }

    /** The machine is taken out; its history stays. */
    public void end(LocalDate day) {
        if (endedOn != null) {
            throw Refusal.of("equipment.ended-already").thrown();
        }
        endedOn = day;
    }

    /** This machine takes the place of one that was taken out. */
    void follow(UUID ended) {
        followsId = ended;
    }

    private void say(Facts facts) {
        var checks = new Checks();
        ownerId = facts.ownerId();
        kind = checks.line("kind", facts.kind());
        name = checks.line("name", facts.name());
        make = checks.optionalLine("make", facts.make());
        model = checks.optionalLine("model", facts.model());
        serial = checks.optionalLine("serial", facts.serial());
        location = checks.optionalLine("location", facts.location());
        installedOn = facts.installedOn();
        installedBy = checks.optionalLine("installedBy", facts.installedBy());
        makerWarrantyUntil = facts.makerWarrantyUntil();
        labourWarrantyUntil = facts.labourWarrantyUntil();
        registration = checks.optionalLine("registration", facts.registration());
        fits = new LinkedHashMap<>(facts.fits());
        nameplate = new LinkedHashMap<>(facts.nameplate());
        checks.orRefuse();
    }

    public Facts facts() {
        return new Facts(
                ownerId,
                kind,
                name,
                make,
                model,
                serial,
                location,
                installedOn,
                installedBy,
                makerWarrantyUntil,
                labourWarrantyUntil,
                registration,
                fits(),
                nameplate());
    }

    public Optional<UUID> homeId() {
        return Optional.ofNullable(homeId);
    }

    public Optional<UUID> buildingId() {
        return Optional.ofNullable(buildingId);
    }

    public String kind() {
        return kind;
    }

    public String name() {
        return name;
    }

    public Map<String, String> fits() {
        return Collections.unmodifiableMap(fits);
    }

    public Map<String, String> nameplate() {
        return Collections.unmodifiableMap(nameplate);
    }

    public Optional<LocalDate> endedOn() {
        return Optional.ofNullable(endedOn);
    }

    public Optional<UUID> followsId() {
        return Optional.ofNullable(followsId);
    }

    /** Where the machine stands in the lists of its place. */
    int position() {
        return position;
    }

    public int version() {
        return version;
    }
}
