package changeover.scheduling.partners;

import changeover.contracts.money.Money;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.UUID;

/** Partners with a licence that holds, and visits given to them: for the tests of this module. */
@ApplicationScoped
public class Licensed {

    @Inject
    Partners partners;

    @Inject
    GivenVisits given;

    public UUID partner(String name) {
        UUID partner = partners.add(new Partners.Facts(name, "electrical", null, null));
        partners.addPaper(partner, new Partners.Paper(PartnerPaper.LICENCE, null, LocalDate.of(2040, 1, 1), 30));
        return partner;
    }

    public UUID give(UUID visit, UUID partner, LocalDate day) {
        return given.give(visit, new GivenVisits.Deal(partner, day, Money.of("80.00", "CAD"), null), null);
    }

    void done(UUID visit, LocalDate day) {
        given.done(visit, day);
    }

    public void takeBack(UUID visit) {
        given.takeBack(visit, "they are ill");
    }
}
