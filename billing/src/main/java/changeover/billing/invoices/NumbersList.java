package changeover.billing.invoices;

import changeover.contracts.agreements.AgreementNumbers;
import changeover.contracts.takeover.Brought;
import changeover.contracts.takeover.BroughtFile;
import changeover.contracts.takeover.BroughtList;
import changeover.contracts.takeover.Title;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Folded;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refused;
import changeover.contracts.words.Wording;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The next number of each series, as a file, for a business that has numbered before. */
@ApplicationScoped
class NumbersList implements BroughtList {

    private static final String DOCUMENT = "document";
    private static final String NEXT = "next";

    private static final List<Numbered> KNOWN = List.of(
            new Numbered(
                    NumberedKind.INVOICE, new Wording("Invoices", "Factures"), "invoice invoices facture factures"),
            new Numbered(
                    NumberedKind.CREDIT,
                    new Wording("Credit notes", "Notes de crédit"),
                    "credit credit_note credit_notes note_de_credit notes_de_credit"),
            new Numbered(
                    NumberedKind.ESTIMATE,
                    new Wording("Estimates", "Estimations"),
                    "estimate estimates estimation estimations"),
            new Numbered(null, new Wording("Agreements", "Ententes"), "agreement agreements entente ententes"));

    /** @param kind null for agreements, which count by themselves */
    private record Numbered(@Nullable NumberedKind kind, Wording name, String words) {

        boolean isCalled(String said) {
            return List.of(words.split(" ")).contains(Folded.of(said).replace(' ', '_'));
        }
    }

    /** The number that follows, and as it is written. */
    private record Next(long number, String label) {}

    @Inject
    NumberSeries series;

    @Inject
    AgreementNumbers agreements;

    @Inject
    Today today;

    @Override
    public String code() {
        return "numbers";
    }

    @Override
    public List<Title> titles() {
        return List.of(Title.needed(DOCUMENT, "document"), Title.needed(NEXT, "prochain"));
    }

    /** Before the agreements that take their numbers. */
    @Override
    public int turn() {
        return 5;
    }

    @Override
    public Brought bring(BroughtFile file, LocalDate day) {
        var notes = new Brought.Notes();
        for (BroughtFile.Row row : file.rows()) {
            try {
                begin(row, notes);
            } catch (Refused refused) {
                Refusal why = refused.refusals().getFirst();
                notes.fault(row.number(), "number".equals(why.field()) ? NEXT : DOCUMENT, why);
            }
        }
        return notes.done();
    }

    private void begin(BroughtFile.Row row, Brought.Notes notes) {
        String said = row.cell(DOCUMENT);
        Numbered numbered = KNOWN.stream()
                .filter(one -> one.isCalled(said))
                .findFirst()
                .orElseThrow(() -> Refusal.of("brought.document-unknown", Map.of("said", said))
                        .thrown());
        int number = number(row.cell(NEXT));
        Next before = next(numbered);
        if (number == before.number()) {
            notes.same();
            return;
        }
        NumberedKind kind = numbered.kind();
        if (kind == null) {
            agreements.begin(number);
        } else {
            series.first(kind, today.day(), number);
        }
        notes.change(
                row.number(),
                numbered.name(),
                Brought.alike(before.label()),
                Brought.alike(next(numbered).label()));
    }

    private Next next(Numbered numbered) {
        NumberedKind kind = numbered.kind();
        if (kind == null) {
            int number = agreements.next();
            return new Next(number, String.valueOf(number));
        }
        NumberSeries.Next next = series.next(kind, today.day());
        return new Next(next.number(), next.label());
    }

    private static int number(String said) {
        if (!said.matches("\\d{1,9}") || Integer.parseInt(said) < 1 || Integer.parseInt(said) > AgreementNumbers.MOST) {
            throw Refusal.of("brought.figure", Map.of("said", said))
                    .at("number")
                    .thrown();
        }
        return Integer.parseInt(said);
    }
}
