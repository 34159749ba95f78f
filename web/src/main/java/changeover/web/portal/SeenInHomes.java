package changeover.web.portal;

import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.FindingLevel;
import changeover.contracts.customers.AllEquipment;
import changeover.contracts.customers.Equipment;
import changeover.scheduling.closeout.Closure;
import changeover.scheduling.closeout.Closures;
import changeover.scheduling.closeout.Finding;
import changeover.scheduling.reviews.Reviews;
import changeover.scheduling.stopped.MachineStop;
import changeover.scheduling.stopped.StopLists;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

/**
 * What was seen in a home and is not put right yet, the worst first, and the reports of its visits. What may hurt
 * somebody is told to whoever lives there now, however long ago it was seen; the rest only since they came.
 */
@ApplicationScoped
public class SeenInHomes {

    private static final int MOST = 20;
    private static final UUID NONE = new UUID(0, 0);

    @Inject
    EntityManager rows;

    @Inject
    AllEquipment equipment;

    @Inject
    StopLists stops;

    @Inject
    Closures closures;

    @Inject
    Reviews reviews;

    /** What somebody still has to look over is not the customer's yet. */
    List<Dwelling.Seen> openIn(UUID home, LocalDate since, Catalogue trade, Locale locale) {
        Set<UUID> held = reviews.heldIn(home);
        List<Finding> open = rows.createQuery("""
                        from Finding where homeId = :home and clearedOn is null
                        and level <> 'do_not_use' and (day >= :since or level = 'urgent')
                        and visitId in (select c.visitId from Closure c where c.homeId = :home) and visitId not in :held
                        order by case level when 'urgent' then 1 when 'recommended' then 2 else 3 end, day desc, id
                        """, Finding.class)
                .setParameter("home", home)
                .setParameter("since", since)
                .setParameter("held", held.isEmpty() ? Set.of(NONE) : held)
                .setMaxResults(MOST)
                .getResultList();
        Map<UUID, String> machines = open.isEmpty()
                ? Map.of()
                : equipment.ofHome(home).stream().collect(Collectors.toMap(Equipment::id, Equipment::name));
        return open.stream()
                .map(finding -> seen(finding, machines, trade, locale))
                .toList();
    }

    /** What must not be used, until somebody with the ticket says otherwise: told to whoever lives there now. */
    List<Dwelling.Seen> stoppedIn(UUID home, Catalogue trade, Locale locale) {
        return stops.openIn(List.of(home)).getOrDefault(home, List.of()).stream()
                .map(stop -> stopped(stop, trade, locale))
                .toList();
    }

    private static Dwelling.Seen stopped(MachineStop stop, Catalogue trade, Locale locale) {
        String own = stop.seen() == null ? "" : stop.seen();
        Optional<String> ours = Optional.ofNullable(stop.sentence())
                .flatMap(trade::findSentence)
                .map(sentence -> sentence.wording().in(locale));
        return new Dwelling.Seen(
                FindingLevel.DO_NOT_USE.code(),
                stop.machine() == null ? "" : stop.machine(),
                ours.orElse(own),
                ours.isPresent() || stop.language() == null ? locale.getLanguage() : stop.language(),
                stop.day());
    }

    List<Dwelling.Report> reportsOf(UUID home, LocalDate since) {
        List<Closure> theirs = closures.ofHome(home).stream()
                .filter(closure -> !closure.day().isBefore(since))
                .toList();
        Set<UUID> held = reviews.heldAmong(theirs.stream().map(Closure::visitId).toList());
        return theirs.stream()
                .filter(closure -> !held.contains(closure.visitId()))
                .map(closure -> new Dwelling.Report(closure.visitId(), closure.day()))
                .toList();
    }

    private static Dwelling.Seen seen(Finding finding, Map<UUID, String> machines, Catalogue trade, Locale locale) {
        String ours = finding.sentenceCode()
                .flatMap(trade::findSentence)
                .map(sentence -> sentence.wording().in(locale))
                .orElse("");
        String machine =
                finding.equipmentId().map(id -> machines.getOrDefault(id, "")).orElse("");
        return new Dwelling.Seen(
                finding.level(),
                machine,
                ours.isEmpty() ? finding.text().orElse("") : ours,
                ours.isEmpty() ? finding.language().orElse(locale.getLanguage()) : locale.getLanguage(),
                finding.day());
    }
}
