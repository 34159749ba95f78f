package changeover.billing.estimates;

import changeover.billing.estimates.EstimateFacts.OtherItem;
import changeover.billing.invoices.Draft;
import changeover.billing.invoices.DraftLine;
import changeover.billing.invoices.ForeseenWork;
import changeover.billing.tax.DocumentTaxes;
import changeover.billing.tax.PropertyUse;
import changeover.billing.tax.TaxLine;
import changeover.billing.tax.TaxQuestion;
import changeover.billing.tax.TaxTables;
import changeover.billing.tax.Taxable;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.BusinessProfile;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Wording;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Works out an estimate as a visit closed on that day would be charged, with the taxes of the home's place on that day. */
@ApplicationScoped
class Estimating {

    @Inject
    ForeseenWork work;

    @Inject
    Homes homes;

    @Inject
    TaxTables tables;

    @Inject
    Businesses businesses;

    /** Who would be asked for it, in which language; refused where nobody pays for the home. */
    Draft foreseen(UUID home, EstimateFacts facts, LocalDate day) {
        List<ForeseenWork.Part> parts = facts.parts().stream()
                .map(part -> new ForeseenWork.Part(part.code(), part.quantity()))
                .toList();
        return work.of(home, day, facts.minutes(), parts)
                .orElseThrow(() -> Refusal.of("estimate.nobody-pays").at("home").thrown());
    }

    EstimateSum sum(UUID homeId, EstimateFacts facts, LocalDate day) {
        return sum(foreseen(homeId, facts, day), homeId, facts, day);
    }

    /** @param draft as foreseen for the same home, facts and day */
    EstimateSum sum(Draft draft, UUID homeId, EstimateFacts facts, LocalDate day) {
        Currency currency = draft.currency();
        List<EstimateLine> lines = lines(draft, facts);
        Home home = homes.get(homeId).orElseThrow();
        List<Taxable> taxables = lines.stream()
                .map(line -> new Taxable(
                        line.position(),
                        TaxQuestion.region(home.country(), home.region()),
                        PropertyUse.of(home.propertyUse()),
                        line.work(),
                        facts.form(),
                        line.net()))
                .toList();
        boolean small = businesses.profile().facts().smallSupplier();
        Refusal unpriced = lines.stream()
                .filter(line -> line.unitPrice() == null)
                .findFirst()
                .map(line -> Refusal.of("invoice.price-missing", Map.of("item", line.words())))
                .orElse(null);
        return switch (DocumentTaxes.of(taxables, day, tables.current(), small)) {
            case DocumentTaxes.Refused refused -> new EstimateSum(currency, lines, List.of(), refused.refusal());
            case DocumentTaxes.Computed computed ->
                new EstimateSum(
                        currency,
                        lines,
                        taxes(computed.lines()),
                        unpriced != null ? unpriced : fromMemory(computed.lines()));
        };
    }

    private static List<EstimateLine> lines(Draft draft, EstimateFacts facts) {
        List<EstimateLine> lines = new ArrayList<>();
        for (DraftLine line : draft.lines()) {
            if (facts.trip() || !line.kind().equals("travel")) {
                lines.add(new EstimateLine(
                        lines.size() + 1,
                        line.kind(),
                        line.itemCode(),
                        line.covered().code(),
                        line.words(),
                        line.why(),
                        line.quantity(),
                        line.unit(),
                        line.unitPrice(),
                        line.discount(),
                        line.net(),
                        facts.work()));
            }
        }
        for (OtherItem other : facts.others()) {
            lines.add(new EstimateLine(
                    lines.size() + 1,
                    "other",
                    null,
                    "billable",
                    new Wording(other.words(), other.words()),
                    new Wording("", ""),
                    other.quantity(),
                    other.unit(),
                    other.unitPrice(),
                    Money.zero(draft.currency()),
                    other.unitPrice().times(other.quantity()),
                    other.work()));
        }
        return lines;
    }

    private List<EstimateTax> taxes(List<TaxLine> lines) {
        BusinessProfile.Facts profile = businesses.profile().facts();
        List<EstimateTax> taxes = new ArrayList<>();
        for (TaxLine line : lines) {
            taxes.add(new EstimateTax(
                    taxes.size() + 1,
                    line.tax().code(),
                    line.tax().label(),
                    line.tax().percent(),
                    number(line, profile),
                    line.base(),
                    line.amount(),
                    line.lines(),
                    line.tax().source()));
        }
        return taxes;
    }

    private static @Nullable String number(TaxLine line, BusinessProfile.Facts profile) {
        return switch (line.tax().code()) {
            case "gst", "hst" -> profile.gstNumber();
            case "qst" -> profile.qstNumber();
            default -> line.tax().registration();
        };
    }

    private static @Nullable Refusal fromMemory(List<TaxLine> lines) {
        return lines.stream()
                .map(TaxLine::tax)
                .filter(tax -> !tax.read())
                .findFirst()
                .map(tax -> Refusal.of("tax.from-memory", Map.of("tax", tax.label(), "region", tax.region())))
                .orElse(null);
    }
}
