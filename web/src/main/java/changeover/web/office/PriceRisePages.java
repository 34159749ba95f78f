package changeover.web.office;

import changeover.billing.costs.DealResult;
import changeover.billing.costs.PlanResults;
import changeover.billing.costs.PlanResults.Over;
import changeover.billing.costs.PriceRise;
import changeover.contracts.tenants.Today;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Tab;
import changeover.web.session.Typed;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Agreement by agreement what a rise of prices would bring, and which would lose money even then. */
@Path("/{slug}/money/plans/rise")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed("owner")
public class PriceRisePages {

    public record Row(
            UUID agreement,
            String plan,
            int number,
            UUID homeId,
            String home,
            String now,
            String rise,
            String then,
            String left,
            String leftThen,
            boolean wouldLose) {}

    /** @param plan whose agreements they are, or empty for all */
    public record View(
            String day,
            String asked,
            String percent,
            String plan,
            boolean onlyLosing,
            List<Row> rows,
            Leaf leaf,
            String now,
            String rise,
            String then,
            String left,
            String leftThen) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance pricerise(Frame frame, View list);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Today today;

    @Inject
    PlanResults results;

    @GET
    @Transactional
    public TemplateInstance rise(@Context UriInfo asked) {
        var typed = new Typed(asked.getQueryParameters());
        @Nullable LocalDate said = typed.dayOrNone("day");
        @Nullable UUID plan = typed.idOrNone("plan");
        BigDecimal percent = PlanResultPages.percent(typed);
        boolean onlyLosing = typed.ticked("lose");
        typed.understood();
        LocalDate day = said == null ? today.day() : said;
        Frame frame = frames.of(Tab.MONEY);
        PriceRise rise =
                PriceRise.of(results.on(day, Over.TERM), percent).listed(Optional.ofNullable(plan), onlyLosing);
        Leaf leaf = Leaf.of(asked, rise.deals().size());
        return Pages.pricerise(
                frame,
                new View(
                        frame.inWords(day),
                        day.toString(),
                        PlanForm.plain(percent, frame.locale()),
                        plan == null || rise.deals().isEmpty()
                                ? ""
                                : rise.deals().getFirst().result().deal().plan().in(frame.locale()),
                        onlyLosing,
                        leaf.shown(rise.deals()).stream()
                                .map(one -> row(one, frame))
                                .toList(),
                        leaf,
                        ResultsInWords.said(rise.sum(PriceRise.OfDeal::now), frame),
                        ResultsInWords.said(rise.sum(PriceRise.OfDeal::rise), frame),
                        ResultsInWords.said(rise.sum(one -> one.now().plus(one.rise())), frame),
                        ResultsInWords.said(rise.sum(one -> one.result().left()), frame),
                        ResultsInWords.said(rise.sum(PriceRise.OfDeal::leftThen), frame)));
    }

    private static Row row(PriceRise.OfDeal one, Frame frame) {
        DealResult result = one.result();
        return new Row(
                result.deal().agreementId(),
                result.deal().plan().in(frame.locale()),
                result.deal().number(),
                result.deal().homeId(),
                result.deal().home(),
                ResultsInWords.said(one.now(), frame),
                ResultsInWords.said(one.rise(), frame),
                ResultsInWords.said(one.now().plus(one.rise()), frame),
                ResultsInWords.said(result.left(), frame),
                ResultsInWords.said(one.leftThen(), frame),
                one.wouldLose());
    }
}
