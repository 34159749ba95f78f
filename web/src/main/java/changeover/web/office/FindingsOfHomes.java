package changeover.web.office;

import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.FindingLevel;
import changeover.scheduling.closeout.Finding;
import changeover.scheduling.stopped.MachineStop;
import changeover.scheduling.stopped.StopLists;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;

/**
 * What must not be used in a home, and what was found there and is not put right yet, the worst first; what was only for information
 * is not open.
 */
@ApplicationScoped
public class FindingsOfHomes {

    @Inject
    EntityManager rows;

    @Inject
    StopLists stops;

    List<HouseCard.Open> openIn(UUID home, Map<UUID, String> machines, Catalogue trade, Locale locale) {
        List<Finding> found =
                rows.createQuery("""
                        from Finding where homeId = :home and clearedOn is null and level in ('urgent', 'recommended')
                        order by case level when 'urgent' then 1 else 2 end, day desc, id
                        """, Finding.class).setParameter("home", home).getResultList();
        return Stream.concat(
                        stops.openIn(List.of(home)).getOrDefault(home, List.of()).stream()
                                .map(stop -> open(stop, trade, locale)),
                        found.stream().map(finding -> open(finding, machines, trade, locale)))
                .toList();
    }

    private static HouseCard.Open open(MachineStop stop, Catalogue trade, Locale locale) {
        String text = Optional.ofNullable(stop.sentence())
                .flatMap(trade::findSentence)
                .map(sentence -> sentence.wording().in(locale))
                .or(() -> Optional.ofNullable(stop.seen()))
                .orElse("");
        return new HouseCard.Open(FindingLevel.DO_NOT_USE.code(), stop.machine(), text, stop.day(), null, null);
    }

    private static HouseCard.Open open(Finding finding, Map<UUID, String> machines, Catalogue trade, Locale locale) {
        String text = finding.sentenceCode()
                .flatMap(trade::findSentence)
                .map(sentence -> sentence.wording().in(locale))
                .or(finding::text)
                .orElse("");
        return new HouseCard.Open(
                finding.level(),
                finding.equipmentId().map(machines::get).orElse(null),
                text,
                finding.day(),
                finding.toldTo().orElse(null),
                finding.answer().orElse(null));
    }
}
