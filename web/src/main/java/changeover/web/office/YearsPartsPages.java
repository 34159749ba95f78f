package changeover.web.office;

import changeover.contracts.words.CsvTable;
import changeover.scheduling.supply.PartNeed;
import changeover.scheduling.supply.Range;
import changeover.scheduling.supply.SupplyAgainstStock;
import changeover.scheduling.supply.YearsSupply;
import changeover.web.session.CsvAnswer;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Tab;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.YearMonth;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What the coming year will use up, part by part and month by month, against what lies in stock: a list to buy from. */
@Path("/{slug}/parts/year")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class YearsPartsPages {

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance yearsparts(Frame frame, YearsPartsView view);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    SupplyAgainstStock years;

    @GET
    @Transactional
    public TemplateInstance read() {
        Frame frame = frames.of(Tab.PARTS);
        return Pages.yearsparts(frame, YearsPartsView.of(years.of(frame.today()), frame));
    }

    /** The same, a row for each part and month, and one for each part's year. */
    @GET
    @Path("file")
    @Transactional
    public Response file() {
        Frame frame = frames.of(Tab.PARTS);
        Locale locale = frame.locale();
        SupplyAgainstStock.Seen seen = years.of(frame.today());
        CsvTable table = locale.getLanguage().equals("fr")
                ? new CsvTable("piece", "code", "format", "fournisseur", "mois", "bas", "milieu", "haut", "en_stock")
                : new CsvTable("part", "code", "size", "supplier", "month", "low", "middle", "high", "in_stock");
        for (SupplyAgainstStock.Part part : seen.parts()) {
            PartNeed need = part.line().need();
            row(table, seen, part, null, need.year(), locale);
            for (Map.Entry<YearMonth, Range> month : need.months().entrySet()) {
                row(table, seen, part, month.getKey(), month.getValue(), locale);
            }
        }
        return CsvAnswer.of(table.bytes(), "parts-" + seen.supply().year().from());
    }

    private static void row(
            CsvTable table,
            SupplyAgainstStock.Seen seen,
            SupplyAgainstStock.Part part,
            @Nullable YearMonth month,
            Range range,
            Locale locale) {
        YearsSupply.Line line = part.line();
        table.row(
                line.part().in(locale),
                line.partCode(),
                line.size(),
                part.supplier(),
                month == null
                        ? seen.supply().year().from() + "/"
                                + seen.supply().year().last()
                        : month,
                range.low(),
                range.middle(),
                range.high(),
                part.held());
    }
}
