package changeover.billing.documents;

import changeover.billing.tax.ContractForm;
import changeover.billing.tax.DocumentTaxes;
import changeover.billing.tax.PropertyUse;
import changeover.billing.tax.TaxQuestion;
import changeover.billing.tax.TaxTables;
import changeover.billing.tax.Taxable;
import changeover.billing.tax.Work;
import changeover.contracts.agreements.Agreement;
import changeover.contracts.agreements.AgreementDetails;
import changeover.contracts.agreements.Agreements;
import changeover.contracts.agreements.AgreementsInWords;
import changeover.contracts.agreements.CanItBeKept;
import changeover.contracts.agreements.Instalments;
import changeover.contracts.agreements.Offer;
import changeover.contracts.agreements.OfferForecast;
import changeover.contracts.catalogue.Cadence;
import changeover.contracts.catalogue.Who;
import changeover.contracts.customers.Customer;
import changeover.contracts.customers.Customers;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Locales;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** An offered agreement becomes the sheet of its offer, with the year as it would be planned if the yes came now. */
@ApplicationScoped
public class OfferSheets {

    private static final String PROMISES = """
            select equipment_id, task_code, cadence::text, who, minutes, basis from agreement_promise
            where tenant_id = current_tenant() and agreement_id = ?::uuid order by position, id
            """;

    @Inject
    AgroalDataSource database;

    @Inject
    Agreements agreements;

    @Inject
    AgreementsInWords inWords;

    @Inject
    CanItBeKept years;

    @Inject
    Customers customers;

    @Inject
    Homes homes;

    @Inject
    TaxTables tables;

    @Inject
    Businesses businesses;

    @Inject
    Letterheads letterheads;

    /** Empty when there is no such agreement; inside the business's transaction. */
    public Optional<OfferSheet> of(UUID agreementId) {
        return agreements
                .find(agreementId)
                .flatMap(agreement -> homes.get(agreement.homeId()).map(home -> sheet(agreement, home)));
    }

    private OfferSheet sheet(Agreement agreement, Home home) {
        Words words = Words.in(Locales.of(agreement.language()));
        Figures figures = new Figures(words);
        AgreementDetails details = inWords.of(agreement.id());
        List<Offer.Promised> promised = new Question(database, PROMISES)
                .all(
                        row -> new Offer.Promised(
                                row.getObject(1, UUID.class),
                                row.getString(2),
                                Cadence.ofJson(row.getString(3)),
                                Who.ofCode(row.getString(4)),
                                row.getInt(5),
                                row.getString(6)),
                        agreement.id());
        OfferForecast year = years.forecast(home.id(), agreement.term(), agreement.visits(), promised);
        OfferYear said = new OfferYear(words, year);
        List<InvoiceSheet.TaxLine> taxes = taxes(agreement, home, words);
        Money total = taxes.stream().map(InvoiceSheet.TaxLine::amount).reduce(agreement.price(), Money::plus);
        Home.Facts place = home.facts();
        List<String> address =
                Places.lines(words, place.unitLabel(), place.street(), place.city(), place.region(), place.postal());
        return new OfferSheet(
                words.language(),
                letterheads.current(words),
                words.say("offer.label", "number", agreement.number()),
                agreement.offeredOn(),
                agreement.validUntil(),
                to(agreement, words, address),
                address,
                agreement.planName().in(words.language()),
                agreement.term().from(),
                agreement.term().last(),
                machines(details, words),
                promises(details, words),
                said.visits(),
                said.notThisYear(),
                included(agreement, details, words, figures),
                agreement.price(),
                taxes,
                total,
                instalments(agreement, figures),
                terms(home, words));
    }

    private InvoiceSheet.Party to(Agreement agreement, Words words, List<String> home) {
        Customer.Facts signer = customers
                .get(agreement.signerId())
                .map(Customer::facts)
                .orElseThrow(() -> new IllegalStateException("nobody signs " + agreement.id()));
        List<String> own = Places.lines(words, null, signer.street(), signer.city(), signer.region(), signer.postal());
        return new InvoiceSheet.Party(signer.name(), own.isEmpty() ? home : own, List.of());
    }

    private static List<String> machines(AgreementDetails details, Words words) {
        return details.machines().stream()
                .filter(machine -> machine.name() != null)
                .map(machine -> machine.name())
                .toList();
    }

    private static List<OfferSheet.Promise> promises(AgreementDetails details, Words words) {
        List<OfferSheet.Promise> promises = new ArrayList<>();
        for (AgreementDetails.Machine machine : details.machines()) {
            for (AgreementDetails.Promised promise : machine.promises()) {
                promises.add(new OfferSheet.Promise(
                        machine.name() == null ? words.say("report.home") : machine.name(),
                        promise.task().in(words.language()),
                        promise.often().in(words.language()),
                        promise.who() == Who.HOUSEHOLD));
            }
        }
        return promises;
    }

    private static List<String> included(Agreement agreement, AgreementDetails details, Words words, Figures figures) {
        List<String> included = new ArrayList<>();
        included.add(words.say(
                agreement.visits() == 1 ? "offer.one-visit" : "offer.many-visits", "count", agreement.visits()));
        details.parts()
                .forEach(part -> included.add(figures.number(part.quantity()) + "\u00a0× "
                        + part.part().in(words.language())));
        if (agreement.includedMinutes() > 0) {
            included.add(words.say("offer.minutes", "minutes", agreement.includedMinutes()));
        }
        if (agreement.discountPercent().signum() > 0) {
            included.add(words.say("offer.discount", "percent", figures.percent(agreement.discountPercent())));
        }
        return included;
    }

    private List<InvoiceSheet.TaxLine> taxes(Agreement agreement, Home home, Words words) {
        boolean small = businesses.profile().facts().smallSupplier();
        Taxable line = new Taxable(
                1,
                TaxQuestion.region(home.country(), home.region()),
                PropertyUse.of(home.propertyUse()),
                Work.MAINTENANCE,
                ContractForm.PLAN,
                agreement.price());
        return switch (DocumentTaxes.of(List.of(line), agreement.offeredOn(), tables.current(), small)) {
            case DocumentTaxes.Computed computed ->
                computed.lines().stream()
                        .map(tax -> new InvoiceSheet.TaxLine(
                                tax.tax().label().in(words.language()),
                                null,
                                tax.tax().registration(),
                                tax.amount()))
                        .toList();
            case DocumentTaxes.Refused unknown -> List.of();
        };
    }

    private static List<OfferSheet.Instalment> instalments(Agreement agreement, Figures figures) {
        return Instalments.of(agreement.price(), agreement.instalments(), agreement.term()).all().stream()
                .map(instalment -> new OfferSheet.Instalment(figures.day(instalment.day()), instalment.amount()))
                .toList();
    }

    private static List<String> terms(Home home, Words words) {
        List<String> terms = new ArrayList<>();
        terms.add(words.say("offer.no-renewal"));
        if (TaxQuestion.region(home.country(), home.region()).equals("CA-QC")) {
            terms.add(words.say("offer.quebec-ending"));
        }
        terms.add(words.say("offer.taxes-by-place"));
        terms.add(words.say("caution.chemicals"));
        return terms;
    }
}
