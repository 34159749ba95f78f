package changeover.web.session;

import changeover.contracts.customers.FoundHome;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.Businesses;
import changeover.scheduling.calls.EmergencyNumber;
import changeover.scheduling.calls.Risk;
import changeover.scheduling.calls.Trouble;
import changeover.scheduling.closeout.Ids;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.core.MultivaluedMap;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What can be chosen while a call is taken: who is at risk, what is wrong, and the home it comes from. */
@ApplicationScoped
public class CallChoices {

    private static final int SHOWN = 8;
    private static final int LONGEST = 100;

    /** A word to choose. */
    public record Choice(String code, String words) {}

    /** A home to choose, and who lives there. */
    public record Place(UUID id, String line, String customer, String phone) {}

    /**
     * What stands around the form.
     *
     * @param number the emergency number where one is known
     * @param places the home in hand, and those that were found
     * @param asked whether homes were looked for
     */
    public record Around(
            String number,
            List<Choice> lives,
            List<Choice> others,
            List<Choice> troubles,
            List<Place> places,
            boolean asked) {}

    @Inject
    Homes homes;

    @Inject
    Businesses businesses;

    public Around around(@Nullable UUID home, String looked, Frame frame) {
        return new Around(
                EmergencyNumber.in(businesses.current().country()).orElse(""),
                risks(true, frame),
                risks(false, frame),
                troubles(frame),
                places(home, looked),
                !looked.isEmpty());
    }

    public static List<Choice> troubles(Frame frame) {
        return Arrays.stream(Trouble.values())
                .map(one -> new Choice(one.code(), one.wording().in(frame.locale())))
                .toList();
    }

    /** @param life those that come before everything else, or the others */
    public static List<Choice> risks(boolean life, Frame frame) {
        return Arrays.stream(Risk.values())
                .filter(risk -> risk.isLife() == life)
                .map(risk -> new Choice(risk.code(), risk.wording().in(frame.locale())))
                .toList();
    }

    /** What homes are looked for by: the words for it, else the telephone, else the name. */
    public static String looked(MultivaluedMap<String, String> fields) {
        for (String field : List.of("q", "phone", "caller")) {
            String said = fields.getFirst(field);
            if (said != null && !said.isBlank()) {
                return said.strip().substring(0, Math.min(LONGEST, said.strip().length()));
            }
        }
        return "";
    }

    /** The home in hand; what is no id, or nobody's here, is not in hand. */
    public @Nullable UUID chosen(MultivaluedMap<String, String> fields) {
        String said = fields.getFirst("home");
        return said == null
                ? null
                : Ids.read(said.strip()).filter(id -> homes.get(id).isPresent()).orElse(null);
    }

    /** The home in hand first, then those that were found. */
    private List<Place> places(@Nullable UUID home, String looked) {
        var places = new ArrayList<Place>();
        if (home != null) {
            Home known = homes.get(home).orElseThrow(NotFoundException::new);
            places.add(new Place(home, known.line(), "", ""));
        }
        List<FoundHome> found = looked.isEmpty() ? List.of() : homes.find(looked, SHOWN);
        found.stream()
                .filter(one -> !one.id().equals(home))
                .map(one -> new Place(
                        one.id(),
                        one.street() + (one.unitLabel() == null ? "" : ", " + one.unitLabel()) + ", " + one.city(),
                        one.customer() == null ? "" : one.customer(),
                        one.phone() == null ? "" : one.phone()))
                .forEach(places::add);
        return places;
    }
}
