package changeover.web.session;

import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.catalogue.Sentence;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Ticket;
import changeover.scheduling.stopped.HeatAnswer;
import changeover.scheduling.stopped.MachineStop;
import changeover.scheduling.stopped.RestoringTicket;
import changeover.scheduling.stopped.StopDeeds;
import changeover.scheduling.stopped.StopEnd;
import changeover.scheduling.stopped.StopLists;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** A stopped machine as people read it, in the office as at the door. */
@ApplicationScoped
public class StopInWords {

    /**
     * @param machine empty where it is no one machine
     * @param visit where it was seen; null when the office wrote it down
     * @param language of the words of what was seen
     * @param ticket code of the one that may restore it
     * @param toDo how many duties are left
     * @param heat null while nobody has said
     */
    public record View(
            UUID id,
            UUID homeId,
            String home,
            String machine,
            @Nullable UUID visit,
            String seen,
            String language,
            String by,
            String day,
            String shutOff,
            String ticket,
            String ticketWords,
            boolean open,
            boolean asksForHeat,
            int toDo,
            boolean late,
            List<Duty> duties,
            List<Correction> corrections,
            @Nullable Heat heat,
            @Nullable Back back) {}

    /**
     * @param who whoever-stops or office
     * @param due its last day
     * @param atOnce whether that is the day of the stop itself
     * @param doneBy empty while it is not done
     */
    public record Duty(
            String code,
            String words,
            String who,
            String due,
            boolean atOnce,
            boolean late,
            String doneBy,
            String doneOn,
            String said,
            String source,
            boolean read) {}

    /** Another ticket is the right one. @param ticket code */
    public record Correction(String ticket, String why, String by, String day) {}

    /** @param tonight empty where nothing was asked */
    public record Heat(
            boolean only, boolean freezing, String tonight, String office, String customer, String by, String day) {}

    /** @param partner empty where it was one of us; else {@code by} wrote it down */
    public record Back(
            boolean inService, String by, String partner, String ticket, String number, String day, String done) {}

    /** Who may end it. @param may whether whoever reads this holds the ticket today */
    public record Holders(boolean may, String names) {}

    @Inject
    OwnCatalogue catalogue;

    @Inject
    Businesses businesses;

    @Inject
    People people;

    @Inject
    StopDeeds deeds;

    @Inject
    StopLists lists;

    @Inject
    CurrentTenant current;

    public List<View> of(List<MachineStop> stops, Frame frame) {
        if (stops.isEmpty()) {
            return List.of();
        }
        Catalogue trade = catalogue.catalogue();
        return stops.stream().map(stop -> view(stop, trade, frame)).toList();
    }

    public View of(MachineStop stop, Frame frame) {
        return view(stop, catalogue.catalogue(), frame);
    }

    /** What must not be used in these homes, by home, in few words: the machine, or else what was seen. */
    public Map<UUID, String> namesIn(Collection<UUID> homes, Frame frame) {
        Map<UUID, List<MachineStop>> open = lists.openIn(homes);
        Map<UUID, String> names = new HashMap<>();
        open.forEach((home, stops) -> names.put(
                home,
                of(stops, frame).stream()
                        .map(one -> one.machine().isEmpty() ? one.seen() : one.machine())
                        .collect(Collectors.joining(", "))));
        return names;
    }

    public Holders holders(MachineStop stop, Frame frame) {
        Set<UUID> holding = people.tickets().stream()
                .filter(ticket -> ticket.kind().equals(stop.ticket()) && ticket.holdsOn(frame.today()))
                .map(Ticket::personId)
                .collect(Collectors.toSet());
        String names = people.all().stream()
                .filter(member -> holding.contains(member.personId()) && member.worksOn(frame.today()))
                .map(Membership::name)
                .collect(Collectors.joining(", "));
        return new Holders(deeds.mayEnd(stop, current.person()), names);
    }

    private View view(MachineStop stop, Catalogue trade, Frame frame) {
        Optional<String> ours = Optional.ofNullable(stop.sentence())
                .flatMap(trade::findSentence)
                .map(Sentence::wording)
                .map(wording -> wording.in(frame.locale()));
        List<MachineStop.Owed> owed = stop.owed();
        return new View(
                stop.id(),
                stop.homeId(),
                stop.home(),
                orEmpty(stop.machine()),
                stop.visitId(),
                ours.orElse(orEmpty(stop.seen())),
                ours.isPresent() || stop.language() == null ? frame.locale().getLanguage() : stop.language(),
                stop.person(),
                frame.brief(stop.day()),
                orEmpty(stop.shutOff()),
                stop.ticket(),
                RestoringTicket.wording(stop.ticket()).in(frame.locale()),
                stop.isOpen(),
                stop.asksForHeat(),
                owed.size(),
                owed.stream().anyMatch(one -> one.isLate(frame.today())),
                stop.duties().stream().map(one -> duty(one, frame)).toList(),
                stop.corrections().stream()
                        .map(one -> new Correction(one.ticket(), one.why(), one.person(), moment(one.at(), frame)))
                        .toList(),
                heat(stop.heat(), frame),
                back(stop.back(), frame));
    }

    private static Duty duty(MachineStop.Owed one, Frame frame) {
        MachineStop.Done done = one.done();
        return new Duty(
                one.duty().code(),
                one.duty().wording().in(frame.locale()),
                one.duty().who(),
                frame.brief(one.due()),
                one.duty().days() == 0,
                one.isLate(frame.today()),
                done == null ? "" : done.who(),
                done == null ? "" : frame.brief(done.day()),
                done == null ? "" : orEmpty(done.words()),
                one.duty().source().in(frame.locale()),
                one.duty().read());
    }

    private @Nullable Heat heat(MachineStop.@Nullable Heat said, Frame frame) {
        if (said == null) {
            return null;
        }
        HeatAnswer answer = said.answer();
        return new Heat(
                answer.onlyHeat(),
                answer.freezing(),
                orEmpty(answer.tonight()),
                called(answer.office(), frame),
                called(answer.customer(), frame),
                said.person(),
                moment(said.at(), frame));
    }

    private String called(HeatAnswer.@Nullable Called called, Frame frame) {
        return called == null ? "" : called.who() + ", " + moment(called.at(), frame);
    }

    /** A day and the hour of the business's wall. */
    private String moment(Instant at, Frame frame) {
        ZonedDateTime here = at.atZone(businesses.current().zone());
        LocalDate day = here.toLocalDate();
        return frame.brief(day) + ", " + here.toLocalTime().truncatedTo(ChronoUnit.MINUTES);
    }

    private static @Nullable Back back(MachineStop.@Nullable Back back, Frame frame) {
        return back == null
                ? null
                : new Back(
                        back.how() == StopEnd.IN_SERVICE,
                        back.person(),
                        orEmpty(back.partner()),
                        RestoringTicket.wording(back.ticket()).in(frame.locale()),
                        orEmpty(back.number()),
                        frame.brief(back.day()),
                        back.done());
    }

    private static String orEmpty(@Nullable String text) {
        return text == null ? "" : text;
    }
}
