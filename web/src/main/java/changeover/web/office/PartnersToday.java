package changeover.web.office;

import changeover.scheduling.partners.GivenVisit;
import changeover.scheduling.partners.GivenVisits;
import changeover.scheduling.partners.Partners;
import changeover.web.session.Frame;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;

/** What of partners is spoken of today: papers that run out, and the visits that they make in the coming week or should have made. */
@ApplicationScoped
public class PartnersToday {

    private static final int SHOWN = 8;
    private static final int A_WEEK = 7;

    /** @param count how many visits are out, of which the first are shown */
    public record View(List<PartnerPages.Paper> papers, List<PartnerPages.Given> out, int count) {}

    @Inject
    Partners partners;

    @Inject
    GivenVisits given;

    View of(Frame frame) {
        List<GivenVisit> out = given.open().stream()
                .filter(one -> !one.day().isAfter(frame.today().plusDays(A_WEEK)))
                .toList();
        return new View(
                partners.runningOut(frame.today()).stream()
                        .map(one -> PartnerPages.paper(one, frame))
                        .toList(),
                out.stream()
                        .limit(SHOWN)
                        .map(one -> PartnerPages.given(one, frame))
                        .toList(),
                out.size());
    }
}
