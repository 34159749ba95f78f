package changeover.scheduling.dayplan.season;

import changeover.contracts.calendar.Window;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Ticket;
import changeover.scheduling.dayplan.Minutes;
import changeover.scheduling.dayplan.Roster;
import changeover.scheduling.dayplan.Rosters;
import changeover.scheduling.dayplan.TechnicianBase;
import changeover.scheduling.dayplan.TechnicianBases;
import changeover.scheduling.dayplan.TravelAtHand;
import changeover.scheduling.dayplan.routes.Travel;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;

/** A question about a season with the facts of the current business: its visits, crew, hours, bookings and roads. */
@ApplicationScoped
public class SeasonCases {

    /** Nobody in particular: whoever has written no hours works the usual ones. */
    private static final UUID ANYBODY = new UUID(0, 0);

    @Inject
    SeasonFacts facts;

    @Inject
    People people;

    @Inject
    Businesses businesses;

    @Inject
    Rosters rosters;

    @Inject
    TechnicianBases bases;

    @Inject
    TravelAtHand travel;

    private record At(UUID hand, LocalDate day) {}

    /** The places of a question, so that their roads can be asked for before a transaction is open. */
    public List<Travel.Place> places(SeasonQuestion asked) {
        var map = new PlacesOnMap();
        var profile = businesses.profile();
        map.number(profile.latitude().orElse(null), profile.longitude().orElse(null));
        var _ = facts.wanted(asked, map);
        var _ = facts.booked(asked.days(), map);
        bases.all().values().forEach(base -> map.number(base.latitude(), base.longitude()));
        return map.places();
    }

    public SeasonCase of(SeasonQuestion asked) {
        var map = new PlacesOnMap();
        var profile = businesses.profile();
        int shop =
                map.number(profile.latitude().orElse(null), profile.longitude().orElse(null));
        List<Wanted> wanted = facts.wanted(asked, map);
        Map<UUID, Membership> members = people.technicians(asked.first()).stream()
                .filter(member -> !asked.without().contains(member.personId()))
                .collect(Collectors.toMap(Membership::personId, Function.identity()));
        List<Hand> hands = new ArrayList<>(hands(members, map, shop));
        for (int number = 1; number <= asked.more(); number++) {
            hands.add(tried(asked, number, shop));
        }
        Roster roster = rosters.of(asked.days());
        Map<At, List<Shift.Booked>> booked = facts.booked(asked.days(), map).stream()
                .collect(Collectors.groupingBy(
                        one -> new At(one.technician(), one.day()),
                        Collectors.mapping(SeasonFacts.Taken::booked, Collectors.toList())));
        List<Shift> shifts = new ArrayList<>();
        Map<LocalDate, SeasonCase.Open> open = new HashMap<>();
        for (LocalDate day = asked.days().from(); day.isBefore(asked.days().until()); day = day.plusDays(1)) {
            LocalDate on = day;
            if (asked.idle().contains(day.getDayOfWeek())) {
                continue;
            }
            roster.on(ANYBODY, day).ifPresent(hours -> open.put(on, open(hours)));
            for (Hand hand : hands) {
                hours(asked, roster, members, hand, day)
                        .map(SeasonCases::open)
                        .map(hours -> new Shift(
                                hand.id(),
                                on,
                                hours.from(),
                                hours.until(),
                                booked.getOrDefault(new At(hand.id(), on), List.of())))
                        .ifPresent(shifts::add);
            }
        }
        return new SeasonCase(wanted, hands, shifts, map.roads(travel.travel()), open, shop, asked.first());
    }

    private static Optional<Roster.Hours> hours(
            SeasonQuestion asked, Roster roster, Map<UUID, Membership> members, Hand hand, LocalDate day) {
        Membership member = members.get(hand.id());
        Window more = asked.moreDays();
        boolean works = member == null ? more != null && more.contains(day) : member.worksOn(day);
        return works ? roster.on(hand.id(), day) : Optional.empty();
    }

    private List<Hand> hands(Map<UUID, Membership> members, PlacesOnMap map, int shop) {
        Map<UUID, Map<String, LocalDate>> held = people.tickets().stream()
                .collect(Collectors.groupingBy(
                        Ticket::personId,
                        Collectors.toMap(
                                Ticket::kind, ticket -> ticket.expiresOn().orElse(LocalDate.MAX))));
        Map<UUID, TechnicianBase.Facts> begin = bases.all();
        return members.keySet().stream()
                .map(id -> {
                    TechnicianBase.Facts base = begin.get(id);
                    return new Hand(
                            id,
                            held.getOrDefault(id, Map.of()),
                            base == null ? shop : map.number(base.latitude(), base.longitude()),
                            base == null ? TechnicianBases.USUAL_LUNCH : base.lunchMinutes(),
                            false);
                })
                .toList();
    }

    private static Hand tried(SeasonQuestion asked, int number, int shop) {
        Map<String, LocalDate> tickets =
                asked.moreTickets().stream().collect(Collectors.toMap(Function.identity(), _ -> LocalDate.MAX));
        return new Hand(new UUID(0, number), tickets, shop, TechnicianBases.USUAL_LUNCH, true);
    }

    private static SeasonCase.Open open(Roster.Hours hours) {
        return new SeasonCase.Open(Minutes.of(hours.starts()), Minutes.of(hours.ends()));
    }
}
