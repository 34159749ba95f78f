package changeover.billing.documents;

import changeover.billing.invoices.Buyer;
import changeover.billing.invoices.DocumentKind;
import changeover.billing.invoices.InvoiceParticulars;
import changeover.billing.invoices.InvoiceView;
import changeover.billing.invoices.WorkPlace;
import changeover.contracts.pictures.Picture;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** An invoice as it is printed becomes the sheet of its paper; of a draft it is the paper that issuing would give. */
@ApplicationScoped
public class InvoiceSheets {

    @Inject
    Letterheads letterheads;

    /** The sheet of one document; inside the business's transaction. */
    public InvoiceSheet of(InvoiceView view) {
        return of(view, letterheads.logo());
    }

    InvoiceSheet of(InvoiceView view, @Nullable Picture logo) {
        Words words = Words.in(view.language());
        Figures figures = new Figures(words);
        boolean differ = taxesDiffer(view);
        String label = view.label() == null ? words.say("invoice.draft") : view.label();
        if (InvoiceParticulars.missing(view).contains(InvoiceParticulars.Particular.REGISTRATION_NUMBERS)) {
            throw new IllegalArgumentException(label + ": a registration number is missing");
        }
        return new InvoiceSheet(
                view.language(),
                kind(view.kind()),
                letterheads.of(view.seller(), words, logo),
                label,
                view.day(),
                view.kind() == DocumentKind.CREDIT || paidInFull(view) ? null : view.dueDay(),
                view.creditsLabel(),
                buyer(view, words),
                work(view, words, figures),
                view.purchaseOrder(),
                InvoiceSheet.Must.forTotal(view.total(), differ),
                lines(view, words),
                view.subtotal(),
                view.taxes().stream()
                        .map(tax -> new InvoiceSheet.TaxLine(
                                tax.label().in(view.language()), null, tax.registration(), tax.amount()))
                        .toList(),
                view.total(),
                view.paidBefore().isZero() ? null : view.paidBefore(),
                notes(view, words, label),
                null);
    }

    private static boolean paidInFull(InvoiceView view) {
        return view.paidBefore().isPositive() && view.leftToPay().isZero();
    }

    private static InvoiceSheet.Kind kind(DocumentKind kind) {
        return switch (kind) {
            case PLAN, VISIT -> InvoiceSheet.Kind.INVOICE;
            case DEPOSIT -> InvoiceSheet.Kind.DEPOSIT;
            case CREDIT -> InvoiceSheet.Kind.CREDIT_NOTE;
        };
    }

    /** Somebody without an address of their own is billed at the home. */
    private static InvoiceSheet.Party buyer(InvoiceView view, Words words) {
        Buyer buyer = view.buyer();
        List<String> address = Places.lines(words, null, buyer.street(), buyer.city(), buyer.region(), buyer.postal());
        if (buyer.street().isBlank() && view.works().size() == 1) {
            address = lines(view.works().getFirst(), words);
        }
        List<String> more = new ArrayList<>();
        if (view.buyerReference() != null) {
            more.add(words.say("invoice.their-reference", "reference", view.buyerReference()));
        }
        if (buyer.taxNumber() != null) {
            more.add(words.say("invoice.their-tax-number", "number", buyer.taxNumber()));
        }
        return new InvoiceSheet.Party(buyer.name(), address, more);
    }

    private static InvoiceSheet.@Nullable Party work(InvoiceView view, Words words, Figures figures) {
        if (view.works().size() != 1) {
            return null;
        }
        List<String> more = new ArrayList<>();
        List<String> days = view.lines().stream()
                .filter(line -> line.visitId() != null)
                .map(InvoiceView.Line::day)
                .distinct()
                .map(figures::day)
                .toList();
        if (!days.isEmpty()) {
            more.add(words.say("invoice.on", "days", String.join(", ", days)));
        }
        return new InvoiceSheet.Party(null, lines(view.works().getFirst(), words), more);
    }

    private static List<String> lines(WorkPlace place, Words words) {
        return Places.lines(words, place.unit(), place.street(), place.city(), place.region(), place.postal());
    }

    private static List<InvoiceSheet.Line> lines(InvoiceView view, Words words) {
        Locale language = view.language();
        Map<UUID, WorkPlace> places =
                view.works().stream().collect(Collectors.toMap(WorkPlace::homeId, Function.identity(), (a, b) -> a));
        TaxedLines taxed = taxed(view);
        List<InvoiceSheet.Line> lines = new ArrayList<>(view.lines().size());
        for (InvoiceView.Line line : view.lines()) {
            String why = line.why().in(language);
            WorkPlace place = line.homeId() == null ? null : places.get(line.homeId());
            if (places.size() > 1 && place != null) {
                String where = lines(place, words).getFirst();
                why = why.isBlank() ? where : where + ". " + why;
            }
            boolean included = line.coverage().equals("included");
            lines.add(new InvoiceSheet.Line(
                    line.quantity(),
                    line.unit(),
                    line.words().in(language),
                    why,
                    included ? null : line.unitPrice(),
                    line.discount().isZero() || included ? null : line.discount(),
                    included,
                    line.net(),
                    taxed.has(line.position())));
        }
        return lines;
    }

    private static TaxedLines taxed(InvoiceView view) {
        return new TaxedLines(view.taxes().stream()
                .map(tax -> new TaxedLines.Row(tax.percent(), tax.lines()))
                .toList());
    }

    private static boolean taxesDiffer(InvoiceView view) {
        return taxed(view)
                .differ(view.lines().stream()
                        .filter(line -> !line.net().isZero())
                        .map(InvoiceView.Line::position)
                        .toList());
    }

    private static List<InvoiceSheet.Note> notes(InvoiceView view, Words words, String label) {
        List<InvoiceSheet.Note> notes = new ArrayList<>();
        if (view.reason() != null) {
            notes.add(new InvoiceSheet.Note(
                    words.say("invoice.why"), view.reason().in(view.language())));
        }
        if (view.untaxed() != null) {
            notes.add(new InvoiceSheet.Note(
                    words.say("invoice.no-tax"), view.untaxed().in(view.language())));
        }
        if (view.kind() != DocumentKind.CREDIT
                && view.label() != null
                && !view.total().isZero()) {
            String paying = paidInFull(view)
                    ? words.say("invoice.paid-words")
                    : words.say(
                            "invoice.paying-words",
                            Map.of("label", label, "business", view.seller().name()));
            notes.add(new InvoiceSheet.Note(words.say("invoice.paying"), paying));
        }
        return notes;
    }
}
