package changeover.billing.documents;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Draws the reports of closed visits. */
@ApplicationScoped
class ReportPapers implements PaperSource {

    @Inject
    ReportSheets sheets;

    @Override
    public Set<PaperKind> kinds() {
        return Set.of(PaperKind.REPORT);
    }

    @Override
    public Map<Wanted, Drawn> draw(List<Wanted> wanted) {
        Map<Wanted, Drawn> drawn = new LinkedHashMap<>();
        for (Wanted one : wanted) {
            Optional<ReportSheet> sheet = sheets.of(one.ofId(), one.version());
            sheet.ifPresent(found -> drawn.put(one, Drawn.of(() -> paper(found, one.version()))));
        }
        return drawn;
    }

    private static DrawnPaper paper(ReportSheet sheet, int version) {
        Words words = Words.in(sheet.language());
        String name = words.say("report.file") + "-" + sheet.day() + (version > 1 ? "-v" + version : "");
        return DrawnPaper.pdf(name, sheet.language().getLanguage(), ServiceReportPdf.bytes(sheet));
    }
}
