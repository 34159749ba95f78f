package changeover.web.office;

import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.scheduling.dayplan.Need;
import changeover.scheduling.dayplan.Needs;
import changeover.scheduling.dayplan.SecondHands;
import changeover.scheduling.dayplan.change.HoursTold;
import changeover.web.session.Frame;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.UUID;

/** What a visit asks of whoever is sent, who goes along, and whether the customer knows its hour. */
@ApplicationScoped
public class AskedOfVisit {

    /**
     * @param second the name of who goes along; empty while nobody does
     * @param told whether the customer was told the hour that it has
     */
    public record Asks(String words, boolean two, String second, boolean told) {}

    @Inject
    Needs needs;

    @Inject
    SecondHands seconds;

    @Inject
    People people;

    @Inject
    HoursTold told;

    Asks of(UUID visit, Frame frame) {
        Need need = needs.of(visit);
        String second = seconds.of(visit)
                .flatMap(one -> people.of(one.technicianId()))
                .map(Membership::name)
                .orElse("");
        return new Asks(NeedInWords.of(need, frame.locale()), need.people() == 2, second, told.isTold(visit));
    }
}
