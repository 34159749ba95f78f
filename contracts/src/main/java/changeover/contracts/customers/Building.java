package changeover.contracts.customers;

import changeover.contracts.tenants.Owned;
import changeover.contracts.words.Checks;
import changeover.contracts.words.FilledOn;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import org.jspecify.annotations.Nullable;

/** A building holds several homes, and the machines that serve them in common belong to it. */
@Entity
@Table(name = "building")
public class Building extends Owned {

    private String name = "";
    private String street = "";
    private String city = "";
    private String region = "";
    private @Nullable String postal;
    private String country = "CA";
    private @Nullable String notes;

    @Version
    private int version;

    public record Facts(
            String name,
            String street,
            String city,
            String region,
            @Nullable String postal,
            String country,
            @Nullable String notes) {}

    static Building write(Facts facts) {
        var building = new Building();
        building.say(facts);
        return building;
    }

    /** Writes the building's facts anew. Refused when somebody else did so since the form was filled. */
    public void rewrite(Facts facts, FilledOn form) {
        form.mustBe(version);
        say(facts);
    }

    private void say(Facts facts) {
        var checks = new Checks();
        name = checks.line("name", facts.name());
        street = checks.line("street", facts.street());
        city = checks.line("city", facts.city());
        region = checks.line("region", facts.region());
        postal = checks.optionalLine("postal", facts.postal());
        country = checks.line("country", facts.country());
        checks.refuseIf(!Country.isCode(country), "country", "country.shape");
        notes = checks.note("notes", facts.notes());
        checks.orRefuse();
    }

    public Facts facts() {
        return new Facts(name, street, city, region, postal, country, notes);
    }

    public String name() {
        return name;
    }

    public int version() {
        return version;
    }
}
