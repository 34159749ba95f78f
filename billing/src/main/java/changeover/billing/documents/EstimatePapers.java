package changeover.billing.documents;

import changeover.billing.estimates.Estimate;
import changeover.billing.estimates.EstimateLine;
import changeover.billing.estimates.EstimateSum;
import changeover.billing.estimates.Estimates;
import changeover.contracts.customers.Customer;
import changeover.contracts.customers.Customers;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.BusinessProfile;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Locales;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Supplier;

/** Draws estimates as they were offered: in the customer's language, in Quebec with the French first. */
@ApplicationScoped
class EstimatePapers implements PaperSource {

    @Inject
    Estimates estimates;

    @Inject
    Customers customers;

    @Inject
    Homes homes;

    @Inject
    Businesses businesses;

    @Inject
    Letterheads letterheads;

    @Override
    public Set<PaperKind> kinds() {
        return Set.of(PaperKind.ESTIMATE);
    }

    @Override
    public Map<Wanted, Drawn> draw(List<Wanted> wanted) {
        Map<Wanted, Drawn> drawn = new LinkedHashMap<>();
        for (Wanted one : wanted) {
            estimates
                    .find(one.ofId())
                    .filter(estimate -> estimate.offer() != null)
                    .map(this::drawing)
                    .ifPresent(paper -> drawn.put(one, Drawn.of(paper)));
        }
        return drawn;
    }

    private Supplier<DrawnPaper> drawing(Estimate estimate) {
        EstimateSum sum = estimates.sum(estimate);
        BusinessProfile.Facts from = businesses.profile().facts();
        List<InvoiceSheet> sheets = Tongues.of(from.country(), from.region(), Locales.of(estimate.language())).stream()
                .map(language -> sheet(estimate, sum, language))
                .toList();
        return () -> DrawnPaper.pdf(sheets.getLast().label(), estimate.language(), InvoicePdf.bytes(sheets));
    }

    private InvoiceSheet sheet(Estimate estimate, EstimateSum sum, Locale language) {
        Words words = Words.in(language);
        Estimate.Offer offer = Objects.requireNonNull(estimate.offer());
        Customer.Facts customer =
                customers.get(estimate.customerId()).orElseThrow().facts();
        Home.Facts home = homes.get(estimate.homeId()).orElseThrow().facts();
        List<String> at =
                Places.lines(words, home.unitLabel(), home.street(), home.city(), home.region(), home.postal());
        List<String> theirs =
                Places.lines(words, null, customer.street(), customer.city(), customer.region(), customer.postal());
        TaxedLines taxed = new TaxedLines(sum.taxes().stream()
                .map(tax -> new TaxedLines.Row(tax.percent(), tax.lines()))
                .toList());
        return new InvoiceSheet(
                language,
                InvoiceSheet.Kind.ESTIMATE,
                letterheads.current(words),
                offer.label(),
                offer.day(),
                estimate.validUntil(),
                null,
                new InvoiceSheet.Party(customer.name(), theirs.isEmpty() ? at : theirs, List.of()),
                new InvoiceSheet.Party(null, at, List.of()),
                null,
                InvoiceSheet.Must.forTotal(offer.total(), taxed.differ(costing(sum))),
                sum.lines().stream().map(line -> line(line, taxed, language)).toList(),
                offer.subtotal(),
                sum.taxes().stream()
                        .map(tax -> new InvoiceSheet.TaxLine(
                                tax.label().in(language), null, tax.registration(), tax.amount()))
                        .toList(),
                offer.total(),
                null,
                notes(estimate, words),
                null);
    }

    private static InvoiceSheet.Line line(EstimateLine line, TaxedLines taxed, Locale language) {
        return new InvoiceSheet.Line(
                line.quantity(),
                line.unit(),
                line.words().in(language),
                line.why().in(language),
                line.included() ? null : line.unitPrice(),
                line.discount().isZero() || line.included() ? null : line.discount(),
                line.included(),
                line.net(),
                taxed.has(line.position()));
    }

    private static List<Integer> costing(EstimateSum sum) {
        return sum.lines().stream()
                .filter(line -> !line.net().isZero())
                .map(EstimateLine::position)
                .toList();
    }

    private List<InvoiceSheet.Note> notes(Estimate estimate, Words words) {
        Figures figures = new Figures(words);
        List<InvoiceSheet.Note> notes = new ArrayList<>();
        notes.add(new InvoiceSheet.Note(words.say("estimate.work"), estimate.words()));
        if (estimate.deposit() != null) {
            notes.add(new InvoiceSheet.Note(
                    words.say("estimate.deposit"),
                    words.say("estimate.deposit-words", "amount", figures.money(estimate.deposit()))));
        }
        String phone = businesses.profile().facts().phone();
        notes.add(new InvoiceSheet.Note(
                words.say("estimate.yes"),
                phone == null
                        ? words.say("estimate.yes-words")
                        : words.say("estimate.yes-phone", "phone", phone.replace(' ', '\u00a0'))));
        notes.add(new InvoiceSheet.Note(words.say("estimate.more"), words.say("estimate.more-words")));
        return notes;
    }
}
