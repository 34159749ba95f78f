package changeover.billing.documents;

import changeover.billing.invoices.InvoiceView;
import changeover.billing.invoices.Invoices;
import changeover.contracts.pictures.Picture;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Draws invoices and credit notes from their frozen rows: three questions to the database, however many there are. */
@ApplicationScoped
class InvoicePapers implements PaperSource {

    @Inject
    Invoices invoices;

    @Inject
    InvoiceSheets sheets;

    @Inject
    Letterheads letterheads;

    @Override
    public Set<PaperKind> kinds() {
        return Set.of(PaperKind.INVOICE, PaperKind.CREDIT);
    }

    @Override
    public Map<Wanted, Drawn> draw(List<Wanted> wanted) {
        Picture logo = letterheads.logo();
        Map<UUID, InvoiceView> views = new LinkedHashMap<>();
        invoices.views(wanted.stream().map(Wanted::ofId).toList()).forEach(view -> views.put(view.id(), view));
        Map<Wanted, Drawn> drawn = new LinkedHashMap<>();
        for (Wanted one : wanted) {
            InvoiceView view = views.get(one.ofId());
            if (view != null) {
                drawn.put(one, Drawn.of(() -> paper(view, logo)));
            }
        }
        return drawn;
    }

    private DrawnPaper paper(InvoiceView view, @Nullable Picture logo) {
        InvoiceSheet sheet = sheets.of(view, logo);
        List<InvoiceSheet> languages =
                Tongues.of(view.seller().country(), view.seller().region(), view.language()).stream()
                        .map(language -> language.equals(view.language()) ? sheet : sheets.of(view.in(language), logo))
                        .toList();
        return DrawnPaper.pdf(sheet.label(), view.language().getLanguage(), InvoicePdf.bytes(languages));
    }
}
