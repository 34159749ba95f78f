package changeover.billing.tax;

import changeover.contracts.tenants.Owned;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refused;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The owner read in a source, on a day, that a rate which we wrote from memory holds; from then on documents carry it. It
 * stands for that rate alone: another percent in a later edition of the table asks again.
 */
@Entity
@Table(name = "tax_confirmation")
public class TaxConfirmation extends Owned {

    private String region = "";

    @Column(name = "property_use")
    private String propertyUse = "";

    private String work = "";

    @Column(name = "contract_form")
    private String contractForm = "";

    private String code = "";
    private BigDecimal percent = BigDecimal.ZERO;

    @Column(name = "valid_from")
    private LocalDate validFrom = LocalDate.EPOCH;

    private String source = "";

    @Column(name = "read_on")
    private LocalDate readOn = LocalDate.EPOCH;

    private @Nullable String registration;

    /**
     * As the owner says it.
     *
     * @param source where it was read: the law, or the page of the tax office
     * @param readOn the day on which it was read
     * @param registration the number under which the tax is collected, for taxes whose number is not in the profile
     */
    public record Facts(
            String source, LocalDate readOn, @Nullable String registration) {}

    /** @throws Refused without a source, or for a day to come */
    static TaxConfirmation of(TaxRow row, Facts facts, LocalDate today) {
        List<Refusal> refusals = new ArrayList<>();
        if (facts.source().isBlank()) {
            refusals.add(Refusal.of("tax.source-missing").at("source"));
        }
        if (facts.readOn().isAfter(today)) {
            refusals.add(Refusal.of("tax.read-to-come").at("readOn"));
        }
        if (!refusals.isEmpty()) {
            throw new Refused(refusals);
        }
        TaxConfirmation confirmation = new TaxConfirmation();
        confirmation.region = row.tax().region();
        confirmation.propertyUse = row.propertyCode();
        confirmation.work = row.workCode();
        confirmation.contractForm = row.formCode();
        confirmation.code = row.tax().code();
        confirmation.percent = row.tax().percent();
        confirmation.validFrom = row.from();
        confirmation.source = facts.source().strip();
        confirmation.readOn = facts.readOn();
        confirmation.registration = facts.registration();
        return confirmation;
    }

    boolean isOf(TaxRow row) {
        return region.equals(row.tax().region())
                && code.equals(row.tax().code())
                && percent.compareTo(row.tax().percent()) == 0
                && validFrom.equals(row.from())
                && propertyUse.equals(row.propertyCode())
                && work.equals(row.workCode())
                && contractForm.equals(row.formCode());
    }

    /** The row with the owner's source in place of our memory. */
    TaxRow over(TaxRow row) {
        Tax tax = row.tax();
        Tax confirmed = new Tax(
                tax.code(),
                tax.label(),
                tax.category(),
                tax.percent(),
                tax.region(),
                registration,
                source + " (" + readOn + ")",
                true);
        return new TaxRow(confirmed, row.property(), row.work(), row.form(), row.from(), row.until());
    }
}
