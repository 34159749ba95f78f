package changeover.deploy.admin;

import changeover.billing.documents.DocumentsToMake;
import changeover.contracts.calendar.Days;
import changeover.contracts.tenants.Doors;
import changeover.contracts.tenants.SettableClock;
import changeover.deploy.Command;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

/** Lets the days of a rehearsal pass one by one for every business, and draws the papers of each. */
@ApplicationScoped
public class Rehearse implements Command {
    private static final int PAPERS = 100;

    @Inject
    SettableClock clock;

    @Inject
    Doors doors;

    @Inject
    Days days;

    @Inject
    DocumentsToMake papers;

    @Override
    public String words() {
        return "rehearse";
    }

    /** @param rest the first day to come and the last, both as 2027-03-31 */
    @Override
    public void run(List<String> rest) {
        LocalDate until = LocalDate.parse(rest.get(1));
        for (LocalDate day = LocalDate.parse(rest.get(0)); !day.isAfter(until); day = day.plusDays(1)) {
            clock.setDay(day);
            for (UUID tenant : doors.tenants()) {
                days.letPass(tenant, day);
                draw(tenant);
            }
        }
    }

    private void draw(UUID tenant) {
        int made = papers.makePending(tenant, PAPERS);
        while (made == PAPERS) {
            made = papers.makePending(tenant, PAPERS);
        }
    }
}
