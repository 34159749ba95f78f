package changeover.web.office;

import changeover.contracts.catalogue.Catalogue;
import changeover.scheduling.closeout.Finding;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;

/** What was found in a home and is not put right yet, the worst first; what was only for information is not open. */
@ApplicationScoped
public class FindingsOfHomes {

    @Inject
    EntityManager rows;

    List<HouseCard.Open> openIn(UUID home, Map<UUID, String> machines, Catalogue trade, Locale locale) {
        return rows.createQuery("""
                        from Finding where homeId = :home and clearedOn is null and level <> 'information'
                        order by case level when 'do_not_use' then 0 when 'urgent' then 1 else 2 end, day desc, id
                        """, Finding.class)
                .setParameter("home", home)
                .getResultStream()
                .map(finding -> open(finding, machines, trade, locale))
                .toList();
    }

    private static HouseCard.Open open(Finding finding, Map<UUID, String> machines, Catalogue trade, Locale locale) {
        String text = finding.sentenceCode()
                .flatMap(trade::findSentence)
                .map(sentence -> sentence.wording().in(locale))
                .or(finding::text)
                .orElse("");
        return new HouseCard.Open(
                finding.visitId(),
                finding.level(),
                finding.equipmentId().map(machines::get).orElse(null),
                text,
                finding.day(),
                finding.toldTo().orElse(null),
                finding.answer().orElse(null));
    }
}
