package changeover.billing.documents;

import changeover.billing.documents.ReceiptPdf.ReceiptSheet;
import changeover.billing.payments.Deposit;
import changeover.billing.payments.Deposits;
import changeover.contracts.customers.Customer;
import changeover.contracts.customers.Customers;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

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

    @Override
    public Set<PaperKind> kinds() {
        return Set.of(PaperKind.RECEIPT);
    }

    @Override
    public Map<Wanted, Drawn> draw(List<Wanted> wanted) {
        Map<Wanted, Drawn> drawn = new LinkedHashMap<>();
        for (Wanted one : wanted) {
            deposits.of(one.ofId()).ifPresent(deposit -> {
                ReceiptSheet sheet = sheet(deposit);
                drawn.put(one, Drawn.of(() -> paper(sheet)));
            });
        }
        return drawn;
    }

    private ReceiptSheet sheet(Deposit deposit) {
        Customer customer = customers.get(deposit.customerId()).orElseThrow();
        Home.Facts home = homes.get(deposit.homeId()).orElseThrow().facts();
        Words words = Words.in(Locale.forLanguageTag(customer.language()));
        List<String> at =
                Places.lines(words, home.unitLabel(), home.street(), home.city(), home.region(), home.postal());
        return new ReceiptSheet(
                letterheads.current(words),
                new InvoiceSheet.Party(customer.name(), List.of(), List.of()),
                at,
                String.valueOf(deposit.number()),
                deposit,
                words);
    }

    private static DrawnPaper paper(ReceiptSheet sheet) {
        String name = sheet.words().say("receipt.title") + "-" + sheet.number();
        return DrawnPaper.pdf(name, sheet.words().language().getLanguage(), ReceiptPdf.bytes(sheet));
    }
}
