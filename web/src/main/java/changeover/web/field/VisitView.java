package changeover.web.field;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * One visit as it is read at the door.
 *
 * @param dayOfVisit whether today is its day
 * @param how how it ended; empty while it is open
 * @param here whether the technician said that they came
 * @param asksPostal whether the home's postal code is not known
 * @param found machines that were written down at this visit
 * @param next the first task without an outcome; null when every task has one
 */
public record VisitView(
        UUID id,
        String home,
        String day,
        String starts,
        int minutes,
        boolean dayOfVisit,
        String how,
        boolean here,
        String gettingIn,
        boolean toBeRead,
        boolean asksPostal,
        int found,
        boolean codes,
        List<Danger> hazards,
        List<String> shut,
        List<Who> people,
        List<Open> findings,
        List<Line> tasks,
        int answered,
        @Nullable Line next) {

    public record Danger(String kind, String note) {}

    /** @param parts codes of what they are to the home */
    public record Who(String name, String phone, String dial, List<String> parts) {}

    /** A finding that is still open from an earlier visit. */
    public record Open(String level, String machine, String words) {}

    /** @param outcome done, not_applicable, deferred, or empty */
    public record Line(
            UUID id,
            int number,
            String machine,
            String words,
            String reason,
            int minutes,
            String outcome,
            String why,
            boolean mayDoIt) {}

    public boolean open() {
        return how.isEmpty();
    }
}
