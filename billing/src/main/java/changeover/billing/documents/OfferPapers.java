package changeover.billing.documents;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Draws the offers of plans. */
@ApplicationScoped
class OfferPapers implements PaperSource {

    @Inject
    OfferSheets sheets;

    @Override
    public Set<PaperKind> kinds() {
        return Set.of(PaperKind.OFFER);
    }

    @Override
    public Map<Wanted, Drawn> draw(List<Wanted> wanted) {
        Map<Wanted, Drawn> drawn = new LinkedHashMap<>();
        for (Wanted one : wanted) {
            sheets.of(one.ofId()).ifPresent(sheet -> drawn.put(one, Drawn.of(() -> paper(sheet))));
        }
        return drawn;
    }

    private static DrawnPaper paper(OfferSheet sheet) {
        String name = Words.in(sheet.language()).say("offer.title") + "-" + sheet.label();
        return DrawnPaper.pdf(name, sheet.language().getLanguage(), OfferPdf.bytes(sheet));
    }
}
