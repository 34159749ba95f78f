package changeover.contracts.tenants;

import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refused;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** What stands on a business's paper: address, telephone, licence and tax numbers, and how long its customers have. */
@Entity
@Table(name = "business_profile")
public class BusinessProfile extends Owned {

    /** A GST/HST account: nine digits, RT, four digits. Source: Canada Revenue Agency, business number format. */
    private static final Pattern GST = Pattern.compile("\\d{9} ?RT ?\\d{4}");

    /** A QST account: ten digits, TQ, four digits. Source: Revenu Quebec, identification number format. */
    private static final Pattern QST = Pattern.compile("\\d{10} ?TQ ?\\d{4}");

    /** Minutes: shorter, and nothing fits; longer, and it is no bound any more. */
    public static final int LEAST_VISIT = 30;

    public static final int LONGEST_VISIT = 600;

    private @Nullable String tagline;
    private String street = "";
    private String city = "";
    private String region = "";
    private String postal = "";
    private String country = "";
    private @Nullable String phone;
    private @Nullable String email;
    private @Nullable String licence;

    @Column(name = "gst_number")
    private @Nullable String gstNumber;

    @Column(name = "qst_number")
    private @Nullable String qstNumber;

    @Column(name = "small_supplier")
    private boolean smallSupplier;

    @Column(name = "carry_open_season")
    private boolean carryOpenSeason = true;

    @Column(name = "invoice_terms_days")
    private int invoiceTermsDays = 30;

    @Column(name = "visit_minutes_at_most")
    private @Nullable Integer visitMinutesAtMost;

    private @Nullable BigDecimal latitude;
    private @Nullable BigDecimal longitude;
    private String theme = "system";
    private byte @Nullable [] logo;

    @Version
    private int version;

    /**
     * Everything that the business writes about itself, as typed on the page of its own matters.
     *
     * @param visitMinutesAtMost how long a visit may be when a year is laid; null for as long as its work
     */
    public record Facts(
            @Nullable String tagline,
            String street,
            String city,
            String region,
            String postal,
            String country,
            @Nullable String phone,
            @Nullable String email,
            @Nullable String licence,
            @Nullable String gstNumber,
            @Nullable String qstNumber,
            boolean smallSupplier,
            boolean carryOpenSeason,
            int invoiceTermsDays,
            String theme,
            @Nullable Integer visitMinutesAtMost) {

        public boolean inQuebec() {
            return Place.isQuebec(country, region);
        }
    }

    static BusinessProfile write(Facts facts) {
        var profile = new BusinessProfile();
        profile.rewrite(facts);
        return profile;
    }

    /** Writes the business's facts anew. Refused where a tax number has not the form of its account. */
    public void rewrite(Facts facts) {
        List<Refusal> refusals = refusals(facts);
        if (!refusals.isEmpty()) {
            throw new Refused(refusals);
        }
        tagline = facts.tagline();
        street = facts.street();
        city = facts.city();
        region = facts.region();
        postal = facts.postal();
        country = facts.country();
        phone = facts.phone();
        email = facts.email();
        licence = facts.licence();
        gstNumber = facts.gstNumber();
        qstNumber = facts.qstNumber();
        smallSupplier = facts.smallSupplier();
        carryOpenSeason = facts.carryOpenSeason();
        invoiceTermsDays = facts.invoiceTermsDays();
        theme = facts.theme();
        visitMinutesAtMost = facts.visitMinutesAtMost();
    }

    public void hang(byte @Nullable [] newLogo) {
        logo = newLogo;
    }

    /** Where the shop stands, from which distances are reckoned: both degrees, or neither. */
    public void standsAt(@Nullable BigDecimal north, @Nullable BigDecimal east) {
        if ((north == null) != (east == null)) {
            throw Refusal.of("business.place-half")
                    .at(north == null ? "latitude" : "longitude")
                    .thrown();
        }
        latitude = north;
        longitude = east;
    }

    /** Degrees north; empty while nobody has said where the shop stands. */
    public Optional<BigDecimal> latitude() {
        return Optional.ofNullable(latitude);
    }

    /** Degrees east. */
    public Optional<BigDecimal> longitude() {
        return Optional.ofNullable(longitude);
    }

    private static List<Refusal> refusals(Facts facts) {
        var refusals = new ArrayList<Refusal>();
        if (facts.gstNumber() != null && !GST.matcher(facts.gstNumber()).matches()) {
            refusals.add(Refusal.of("business.gst-number-shape").at("gstNumber"));
        }
        if (facts.qstNumber() != null && !QST.matcher(facts.qstNumber()).matches()) {
            refusals.add(Refusal.of("business.qst-number-shape").at("qstNumber"));
        }
        if (facts.smallSupplier() && (facts.gstNumber() != null || facts.qstNumber() != null)) {
            refusals.add(Refusal.of("business.small-supplier-or-numbers").at("smallSupplier"));
        }
        if (facts.invoiceTermsDays() < 0 || facts.invoiceTermsDays() > 365) {
            refusals.add(Refusal.of("business.terms-days").at("invoiceTermsDays"));
        }
        if (facts.visitMinutesAtMost() != null
                && (facts.visitMinutesAtMost() < LEAST_VISIT || facts.visitMinutesAtMost() > LONGEST_VISIT)) {
            refusals.add(Refusal.of("business.visit-minutes").at("visitMinutesAtMost"));
        }
        return refusals;
    }

    public Facts facts() {
        return new Facts(
                tagline,
                street,
                city,
                region,
                postal,
                country,
                phone,
                email,
                licence,
                gstNumber,
                qstNumber,
                smallSupplier,
                carryOpenSeason,
                invoiceTermsDays,
                theme,
                visitMinutesAtMost);
    }

    public Optional<byte[]> logo() {
        return Optional.ofNullable(logo);
    }

    public int version() {
        return version;
    }
}
