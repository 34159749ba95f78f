package changeover.billing.tax;

import changeover.contracts.calendar.DayInWords;
import changeover.contracts.tenants.Owned;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refused;
import changeover.contracts.words.Wording;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A tax that the business added for a place, with the day it begins and the source it was read in. */
@Entity
@Table(name = "own_tax")
public class OwnTax extends Owned {

    private static final String ANY = "any";
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    private String region = "";

    @Column(name = "property_use")
    private String propertyUse = ANY;

    private String work = ANY;

    @Column(name = "contract_form")
    private String contractForm = ANY;

    private int position;
    private String code = "";

    @Column(name = "label_en")
    private String labelEn = "";

    @Column(name = "label_fr")
    private String labelFr = "";

    private String category = "S";
    private BigDecimal percent = BigDecimal.ZERO;
    private @Nullable String registration;

    @Column(name = "valid_from")
    private LocalDate validFrom = LocalDate.EPOCH;

    @Column(name = "valid_until")
    private @Nullable LocalDate validUntil;

    private String source = "";

    /**
     * As typed by the owner.
     *
     * @param region ISO 3166-2, {@code US-NY}
     * @param property, work, form null for all
     * @param label as printed, rate in it
     * @param registration printed on the tax's line; null where the place asks for none
     */
    public record Facts(
            String region,
            @Nullable PropertyUse property,
            @Nullable Work work,
            @Nullable ContractForm form,
            int position,
            String code,
            Wording label,
            String category,
            BigDecimal percent,
            @Nullable String registration,
            LocalDate from,
            @Nullable LocalDate until,
            String source) {}

    /** @throws Refused without a source, or where a field is not of its form */
    public static OwnTax add(Facts facts) {
        List<Refusal> refusals = refusals(facts);
        if (!refusals.isEmpty()) {
            throw new Refused(refusals);
        }
        OwnTax tax = new OwnTax();
        tax.region = facts.region().strip().toUpperCase(Locale.ROOT);
        tax.propertyUse = facts.property() == null ? ANY : facts.property().code();
        tax.work = facts.work() == null ? ANY : facts.work().code();
        tax.contractForm = facts.form() == null ? ANY : facts.form().code();
        tax.position = facts.position();
        tax.code = facts.code();
        tax.labelEn = facts.label().en().strip();
        tax.labelFr = facts.label().fr().strip();
        tax.category = facts.category();
        tax.percent = facts.percent();
        tax.registration = facts.registration();
        tax.validFrom = facts.from();
        tax.validUntil = facts.until();
        tax.source = facts.source().strip();
        return tax;
    }

    private static List<Refusal> refusals(Facts facts) {
        List<Refusal> refusals = new ArrayList<>();
        if (!facts.region().strip().toUpperCase(Locale.ROOT).matches("[A-Z]{2}-[A-Z0-9]{1,3}")) {
            refusals.add(Refusal.of("tax.region-shape").at("region"));
        }
        if (!facts.code().matches("[a-z][a-z0-9_]{1,19}")) {
            refusals.add(Refusal.of("tax.code-shape").at("code"));
        }
        if (facts.label().en().isBlank() || facts.label().fr().isBlank()) {
            refusals.add(Refusal.of("tax.label-missing").at("label"));
        }
        if (QuebecFigures.namesNoRate(facts.region(), facts.label())) {
            refusals.add(Refusal.of("tax.quebec-two").at("label"));
        }
        if (QuebecFigures.noRate(facts.region(), facts.percent())) {
            refusals.add(Refusal.of("tax.quebec-two").at("percent"));
        }
        TaxCategory category = TaxCategory.of(facts.category()).orElse(null);
        if (category == null) {
            refusals.add(Refusal.of("tax.category").at("category"));
        } else if (!category.charges() && facts.percent().signum() != 0) {
            refusals.add(Refusal.of("tax.category-charges-nothing").at("percent"));
        }
        if (facts.percent().signum() < 0
                || facts.percent().compareTo(HUNDRED) > 0
                || facts.percent().scale() > 4) {
            refusals.add(Refusal.of("tax.percent").at("percent"));
        }
        if (facts.until() != null && facts.until().isBefore(facts.from())) {
            refusals.add(Refusal.of("tax.until-before-from").at("until"));
        }
        if (facts.source().isBlank()) {
            refusals.add(Refusal.of("tax.source-missing").at("source"));
        }
        return refusals;
    }

    /** Its last day; documents issued for later days no longer find it. What has ended stays as it ended. */
    void end(LocalDate lastDay, LocalDate today) {
        if (validUntil != null && validUntil.isBefore(today)) {
            throw Refusal.of("tax.ended", Map.of("day", DayInWords.of(validUntil)))
                    .at("ended")
                    .thrown();
        }
        if (lastDay.isBefore(validFrom)) {
            throw Refusal.of("tax.until-before-from").at("lastDay").thrown();
        }
        validUntil = lastDay;
    }

    public TaxRow row() {
        Tax tax = new Tax(
                code,
                new Wording(labelEn, labelFr),
                category,
                percent.stripTrailingZeros(),
                region,
                registration,
                source,
                true);
        return new TaxRow(
                tax,
                propertyUse.equals(ANY) ? null : PropertyUse.of(propertyUse),
                work.equals(ANY) ? null : Work.of(work),
                contractForm.equals(ANY) ? null : ContractForm.of(contractForm),
                validFrom,
                validUntil);
    }
}
