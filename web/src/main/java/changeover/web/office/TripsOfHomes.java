package changeover.web.office;

import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.scheduling.closeout.Closure;
import changeover.scheduling.closeout.Closures;
import changeover.scheduling.partners.GivenVisits;
import changeover.scheduling.visits.YearOfHome;
import changeover.scheduling.visits.YearOfHome.Going;
import changeover.scheduling.visits.YearOfHome.Standing;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The visits of a home as lines: those to be made, and every one that ended, of other years too when it was closed. */
@ApplicationScoped
public class TripsOfHomes {

    private static final Comparator<LocalDate> ORDER = Comparator.naturalOrder();

    @Inject
    Closures closures;

    @Inject
    People people;

    @Inject
    GivenVisits given;

    List<HouseCard.Trip> coming(YearOfHome year) {
        return year.visits().stream()
                .filter(going -> !ended(going))
                .sorted(Comparator.comparing(TripsOfHomes::when, ORDER))
                .map(going -> trip(going, going.technician()))
                .toList();
    }

    List<HouseCard.Trip> past(YearOfHome year) {
        Map<UUID, Going> known = year.visits().stream().collect(Collectors.toMap(Going::visitId, going -> going));
        Map<UUID, String> names =
                people.all().stream().collect(Collectors.toMap(Membership::personId, Membership::name, (a, b) -> a));
        Map<UUID, String> partners = given.namesIn(year.homeId());
        var past = new ArrayList<HouseCard.Trip>();
        for (Closure closure : closures.ofHome(year.homeId())) {
            Going going = known.get(closure.visitId());
            past.add(new HouseCard.Trip(
                    closure.visitId(),
                    going == null ? "" : going.kind().code(),
                    code(Standing.CLOSED),
                    closure.day(),
                    closure.day(),
                    closure.day(),
                    null,
                    partners.getOrDefault(closure.visitId(), names.getOrDefault(closure.technicianId(), "")),
                    closure.minutes(),
                    going == null ? 0 : going.tasks().size(),
                    closure.nobodyWhy().orElse(null)));
        }
        var closed = past.stream().map(HouseCard.Trip::id).collect(Collectors.toSet());
        year.visits().stream()
                .filter(TripsOfHomes::ended)
                .filter(going -> !closed.contains(going.visitId()))
                .map(going -> trip(going, going.technician()))
                .forEach(past::add);
        past.sort(Comparator.comparing((HouseCard.Trip trip) -> trip.day() == null ? trip.last() : trip.day(), ORDER)
                .reversed());
        return past;
    }

    private static HouseCard.Trip trip(Going going, @Nullable String technician) {
        return new HouseCard.Trip(
                going.visitId(),
                going.kind().code(),
                code(going.standing()),
                going.day(),
                going.window().from(),
                going.window().last(),
                going.starts(),
                technician,
                going.minutes(),
                going.tasks().size(),
                going.why());
    }

    private static boolean ended(Going going) {
        return switch (going.standing()) {
            case CLOSED, CANCELLED, NO_ACCESS, NOT_KEPT -> true;
            case TO_COME, WITHOUT_DAY, HAS_A_DAY, LATE -> false;
        };
    }

    private static LocalDate when(Going going) {
        LocalDate day = going.day();
        return day == null ? going.window().last() : day;
    }

    private static String code(Standing standing) {
        return standing.name().toLowerCase(Locale.ROOT);
    }
}
