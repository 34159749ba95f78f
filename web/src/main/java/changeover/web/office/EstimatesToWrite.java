package changeover.web.office;

import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.scheduling.closeout.Finding;
import changeover.scheduling.closeout.FollowUp;
import changeover.scheduling.closeout.FollowUps;
import changeover.web.session.Frame;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;

/** What visits found and left to be estimated, the oldest first. */
@ApplicationScoped
class EstimatesToWrite {

    @Inject
    FollowUps followUps;

    @Inject
    Homes homes;

    @Inject
    OwnCatalogue catalogue;

    @Inject
    EntityManager rows;

    List<EstimatePages.ToWrite> all(Frame frame) {
        List<FollowUp> open = followUps.open().stream()
                .filter(one -> one.kind().equals("estimate"))
                .toList();
        if (open.isEmpty()) {
            return List.of();
        }
        Map<UUID, String> known = homes
                .all(open.stream().map(FollowUp::homeId).distinct().toList())
                .stream()
                .collect(Collectors.toMap(Home::id, Home::line));
        Map<UUID, String> found = findings(open, frame.locale());
        return open.stream()
                .filter(one -> known.containsKey(one.homeId()))
                .map(one -> new EstimatePages.ToWrite(
                        one.id(),
                        one.homeId(),
                        known.getOrDefault(one.homeId(), ""),
                        one.visitId(),
                        frame.brief(one.openedOn()),
                        one.findingId().map(id -> found.getOrDefault(id, "")).orElse("")))
                .toList();
    }

    /** What was found, in the reader's words where the trade has them, else as the technician wrote it. */
    private Map<UUID, String> findings(List<FollowUp> open, Locale locale) {
        List<UUID> ids = open.stream()
                .flatMap(one -> one.findingId().stream())
                .distinct()
                .toList();
        Catalogue trade = catalogue.catalogue();
        return rows.createQuery("from Finding where id in :ids", Finding.class)
                .setParameter("ids", ids)
                .getResultStream()
                .collect(Collectors.toMap(Finding::id, finding -> words(finding, trade, locale)));
    }

    private static String words(Finding finding, Catalogue trade, Locale locale) {
        return finding.sentenceCode()
                .flatMap(trade::findSentence)
                .map(sentence -> sentence.wording().in(locale))
                .or(finding::text)
                .orElse("");
    }
}
