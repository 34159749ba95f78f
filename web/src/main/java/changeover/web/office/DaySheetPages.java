package changeover.web.office;

import changeover.billing.documents.DaySheetsPdf;
import changeover.contracts.tenants.Businesses;
import changeover.scheduling.closeout.DaySheet;
import changeover.scheduling.closeout.DaySheets;
import changeover.scheduling.dayplan.DayPlan;
import changeover.scheduling.dayplan.DayPlans;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.PaperAnswer;
import changeover.web.session.Tab;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;

/** A day's sheets on paper, with blank close-outs: printed in the evening for the next day, without a key or a code. */
@Path("/{slug}/season/{day}/sheets.pdf")
@RolesAllowed({"owner", "office"})
public class DaySheetPages {

    @Inject
    Frames frames;

    @Inject
    DaySheets sheets;

    @Inject
    DayPlans plans;

    @Inject
    HomesToBewareOf beware;

    @Inject
    Businesses businesses;

    @GET
    @Transactional
    public Response sheets(@PathParam("day") String said) {
        LocalDate day = SaidDay.of(said);
        Frame frame = frames.of(Tab.SEASON);
        List<DaySheet> all = plans.of(day).stream()
                .filter(plan -> !plan.stops().isEmpty())
                .map(DayPlan::technicianId)
                .map(technician -> sheets.onPaper(technician, day))
                .toList();
        return PaperAnswer.of(
                DaySheetsPdf.bytes(
                        frame.locale(),
                        businesses.current().name(),
                        all,
                        beware.of(
                                all.stream()
                                        .flatMap(sheet -> sheet.stops().stream())
                                        .map(DaySheet.Stop::homeId)
                                        .collect(Collectors.toSet()),
                                day,
                                frame)),
                "sheets-" + day + ".pdf");
    }
}
