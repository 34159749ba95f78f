package changeover.billing.documents;

import changeover.billing.documents.ReceiptPdf.ReceiptSheet;
import changeover.billing.payments.Deposit;
import changeover.billing.payments.Deposits;
import changeover.contracts.customers.Customer;
import changeover.contracts.customers.Customers;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.Business;
import changeover.contracts.tenants.Businesses;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;

/** Draws the receipts of deposits, in the customer's language. */
@ApplicationScoped
class ReceiptPapers implements PaperSource {

    @Inject
    Deposits deposits;

    @Inject
    Customers customers;

    @Inject
    Homes homes;

    @Inject
    Letterheads letterheads;

    @Inject
    Businesses businesses;

    @Override
    public Set<PaperKind> kinds() {
        return Set.of(PaperKind.RECEIPT);
    }

    @Override
    public Map<Wanted, Drawn> draw(List<Wanted> wanted) {
        Map<UUID, Deposit> kept = new HashMap<>();
        deposits.those(wanted.stream().map(Wanted::ofId).toList()).forEach(one -> kept.put(one.id(), one));
        Map<UUID, Customer> whose = new HashMap<>();
        customers
                .all(kept.values().stream().map(Deposit::customerId).distinct().toList())
                .forEach(one -> whose.put(one.id(), one));
        Map<UUID, Home> where = new HashMap<>();
        homes.all(kept.values().stream().map(Deposit::homeId).distinct().toList())
                .forEach(one -> where.put(one.id(), one));
        Map<Wanted, Drawn> drawn = new LinkedHashMap<>();
        for (Wanted one : wanted) {
            Deposit deposit = kept.get(one.ofId());
            if (deposit != null) {
                List<ReceiptSheet> sheets = sheets(
                        deposit,
                        Objects.requireNonNull(whose.get(deposit.customerId())),
                        Objects.requireNonNull(where.get(deposit.homeId())).facts());
                drawn.put(one, Drawn.of(() -> paper(sheets)));
            }
        }
        return drawn;
    }

    private List<ReceiptSheet> sheets(Deposit deposit, Customer customer, Home.Facts home) {
        Business business = businesses.current();
        return Tongues.of(business.country(), business.region(), Locale.forLanguageTag(customer.language())).stream()
                .map(Words::in)
                .map(words -> new ReceiptSheet(
                        letterheads.current(words),
                        new InvoiceSheet.Party(customer.name(), List.of(), List.of()),
                        Places.lines(words, home.unitLabel(), home.street(), home.city(), home.region(), home.postal()),
                        String.valueOf(deposit.number()),
                        deposit,
                        words))
                .toList();
    }

    private static DrawnPaper paper(List<ReceiptSheet> sheets) {
        ReceiptSheet reader = sheets.getLast();
        String name = reader.words().say("receipt.title") + "-" + reader.number();
        return DrawnPaper.pdf(name, reader.words().language().getLanguage(), ReceiptPdf.bytes(sheets));
    }
}
