package changeover.contracts.customers;

import changeover.contracts.tenants.Owned;
import changeover.contracts.words.Checks;
import changeover.contracts.words.FilledOn;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** One dwelling at one address: the place of the work, whose region decides the taxes. */
@Entity
@Table(name = "home")
public class Home extends Owned {

    /** What the place is used for, which some taxes ask. */
    public static final List<String> USES = List.of("residential", "commercial");

    @Column(updatable = false)
    private String key = "";

    @Column(name = "building_id")
    private @Nullable UUID buildingId;

    @Column(name = "unit_label")
    private @Nullable String unitLabel;

    private String street = "";
    private String city = "";
    private String region = "";
    private @Nullable String postal;
    private String country = "CA";
    private @Nullable BigDecimal latitude;
    private @Nullable BigDecimal longitude;

    @Column(name = "property_use")
    private String propertyUse = "residential";

    @Column(name = "built_in")
    private @Nullable Integer builtIn;

    @Column(name = "getting_in")
    private @Nullable String gettingIn;

    @Column(name = "to_be_read")
    private boolean toBeRead;

    @Version
    private int version;

    /**
     * What is known of a home.
     *
     * @param unitLabel which dwelling of the building: "2", "upper floor"
     * @param region as ISO 3166-2 writes it after the hyphen: QC, ON
     * @param latitude degrees north, -90 to 90
     * @param longitude degrees east, -180 to 180
     * @param builtIn the year the building was made
     * @param gettingIn how one gets in, without any secret: codes and keys stand in their own register
     * @param toBeRead the equipment is read at the first visit
     */
    public record Facts(
            @Nullable UUID buildingId,
            @Nullable String unitLabel,
            String street,
            String city,
            String region,
            @Nullable String postal,
            String country,
            @Nullable BigDecimal latitude,
            @Nullable BigDecimal longitude,
            String propertyUse,
            @Nullable Integer builtIn,
            @Nullable String gettingIn,
            boolean toBeRead) {

        public static Facts at(String street, String city, String region, @Nullable String postal, String country) {
            return new Facts(
                    null, null, street, city, region, postal, country, null, null, "residential", null, null, false);
        }
    }

    static Home write(String key, Facts facts) {
        var home = new Home();
        home.key = key;
        home.say(facts);
        return home;
    }

    /** Writes the home's facts anew. Refused when somebody else did so since the form was filled. */
    public void rewrite(Facts facts, FilledOn form) {
        form.mustBe(version);
        say(facts);
    }

    /** The first visit has read the plates: nothing is left to be read. */
    public void equipmentRead() {
        toBeRead = false;
    }

    private void say(Facts facts) {
        var checks = new Checks();
        buildingId = facts.buildingId();
        unitLabel = checks.optionalLine("unitLabel", facts.unitLabel());
        String streetSaid = checks.note("street", facts.street());
        checks.refuseIf(streetSaid == null, "street", "text.missing");
        street = streetSaid == null ? "" : streetSaid;
        city = checks.line("city", facts.city());
        region = checks.line("region", facts.region());
        postal = checks.optionalLine("postal", facts.postal());
        country = checks.line("country", facts.country());
        checks.refuseIf(!Country.isCode(country), "country", "country.shape");
        latitude = facts.latitude();
        checks.refuseIf(beyond(latitude, 90), "latitude", "home.latitude");
        longitude = facts.longitude();
        checks.refuseIf(beyond(longitude, 180), "longitude", "home.longitude");
        propertyUse = checks.oneOf("propertyUse", facts.propertyUse(), USES);
        builtIn = facts.builtIn();
        checks.refuseIf(builtIn != null && (builtIn < 1600 || builtIn > 2200), "builtIn", "home.built-in");
        gettingIn = checks.note("gettingIn", facts.gettingIn());
        toBeRead = facts.toBeRead();
        checks.orRefuse();
    }

    private static boolean beyond(@Nullable BigDecimal degrees, int limit) {
        return degrees != null && degrees.abs().compareTo(BigDecimal.valueOf(limit)) > 0;
    }

    public Facts facts() {
        return new Facts(
                buildingId,
                unitLabel,
                street,
                city,
                region,
                postal,
                country,
                latitude,
                longitude,
                propertyUse,
                builtIn,
                gettingIn,
                toBeRead);
    }

    /** The home's key in the homes file. */
    public String key() {
        return key;
    }

    public Optional<UUID> buildingId() {
        return Optional.ofNullable(buildingId);
    }

    /** The address in one line: street, unit, city. */
    public String line() {
        return HomeLine.of(street, unitLabel, city);
    }

    public String country() {
        return country;
    }

    public String region() {
        return region;
    }

    public String propertyUse() {
        return propertyUse;
    }

    public boolean toBeRead() {
        return toBeRead;
    }

    public int version() {
        return version;
    }
}
