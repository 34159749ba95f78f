package changeover.contracts.tenants;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Currency;
import java.util.Locale;
import java.util.UUID;

/** One service business on this installation: its address on the web, its language, its clock and its money. */
@Entity
@Table(name = "business")
public class Business {

    @Id
    private UUID id;

    private String slug;
    private String name;
    private String language;
    private String zone;
    private String country;
    private String region;
    private String currency;

    @Column(name = "opened_on")
    private LocalDate openedOn;

    protected Business() {
        this(new UUID(0, 0), "", "", "en", "UTC", "CA", "QC", "CAD", LocalDate.EPOCH);
    }

    private Business(
            UUID id,
            String slug,
            String name,
            String language,
            String zone,
            String country,
            String region,
            String currency,
            LocalDate openedOn) {
        this.id = id;
        this.slug = slug;
        this.name = name;
        this.language = language;
        this.zone = zone;
        this.country = country;
        this.region = region;
        this.currency = currency;
        this.openedOn = openedOn;
    }

    static Business open(UUID id, NewBusiness facts, LocalDate day) {
        return new Business(
                id,
                facts.slug(),
                facts.name(),
                facts.language(),
                facts.place().zone().getId(),
                facts.place().country(),
                facts.place().region(),
                facts.place().currency().getCurrencyCode(),
                day);
    }

    public UUID id() {
        return id;
    }

    public String slug() {
        return slug;
    }

    public String name() {
        return name;
    }

    public Locale locale() {
        return Locales.of(language);
    }

    public String language() {
        return language;
    }

    public ZoneId zone() {
        return ZoneId.of(zone);
    }

    public String country() {
        return country;
    }

    /** The part of the country, as ISO 3166-2 writes it after the hyphen: QC, ON. */
    public String region() {
        return region;
    }

    /** As ISO 3166-2 writes it: {@code CA-QC}. */
    public String place() {
        return country + "-" + region;
    }

    public Currency currency() {
        return Currency.getInstance(currency);
    }

    public LocalDate openedOn() {
        return openedOn;
    }
}
