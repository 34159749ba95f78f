package changeover.scheduling.closeout;

import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.FindingLevel;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.catalogue.Sentence;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import changeover.scheduling.closeout.ReportFacts.FindingFact;
import changeover.scheduling.closeout.ReportFacts.PhotoFact;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What was found at the homes of the current business. Anyone may see and stop; what is not to be used goes back in service
 * only by somebody with the right ticket.
 */
@ApplicationScoped
public class Findings {

    @Inject
    EntityManager rows;

    @Inject
    OwnCatalogue own;

    @Inject
    Today today;

    @Inject
    Photos photos;

    public Optional<Finding> find(UUID id) {
        return Optional.ofNullable(rows.find(Finding.class, id));
    }

    /** Everything more than information that nobody has cleared, the gravest first. */
    public List<Finding> openIn(UUID homeId) {
        return openIn(List.of(homeId));
    }

    public List<Finding> openIn(Collection<UUID> homeIds) {
        return homeIds.isEmpty()
                ? List.of()
                : rows.createQuery(
                                "from Finding where homeId in :homes and clearedOn is null and level <> 'information'"
                                        + " order by case level when 'do_not_use' then 0 when 'urgent' then 1 else 2 end,"
                                        + " day, id",
                                Finding.class)
                        .setParameter("homes", homeIds)
                        .getResultList();
    }

    /** What must not be used anywhere in the business today. */
    public List<Finding> notToBeUsed() {
        return rows.createQuery(
                        "from Finding where level = 'do_not_use' and clearedOn is null order by day, id", Finding.class)
                .getResultList();
    }

    /**
     * It is put right. What is not to be used is put right by whoever may end its stop, and nowhere else.
     *
     * @param how in words, at most 4,000 letters
     * @param by who says so
     */
    public void clear(UUID findingId, String how, UUID by) {
        Finding finding = find(findingId)
                .orElseThrow(() -> Refusal.of("closeout.finding-not-found").thrown());
        if (finding.clearedOn().isPresent()) {
            throw Refusal.of("closeout.finding-cleared").thrown();
        }
        if (how.isBlank()
                || how.length() > Body.LONGEST_WORDS
                || !how.strip().equals(Storable.line(how, how.length()))) {
            throw Refusal.of("closeout.finding-why").at("how").thrown();
        }
        if (finding.level().equals(FindingLevel.DO_NOT_USE.code())) {
            throw Refusal.of("closeout.finding-is-stopped").thrown();
        }
        finding.clear(today.day(), by, how.strip());
        rows.flush();
    }

    /** The stop that a finding began has ended; a finding that was corrected away meanwhile needs nothing. */
    public void ended(UUID findingId, LocalDate day, String how, UUID by) {
        find(findingId)
                .filter(finding -> finding.clearedOn().isEmpty())
                .ifPresent(finding -> finding.clear(day, by, how));
        rows.flush();
    }

    /** The findings of a visit as they are printed. */
    List<FindingFact> facts(VisitAtHand visit) {
        Catalogue catalogue = own.catalogue();
        Map<UUID, List<PhotoFact>> shown = photos.byFinding(visit.id());
        return rows.createQuery("from Finding where visitId = :visit order by id", Finding.class)
                .setParameter("visit", visit.id())
                .getResultStream()
                .map(finding -> fact(
                        finding,
                        visit.machineName(finding.equipmentId().orElse(null)),
                        catalogue,
                        shown.getOrDefault(finding.id(), List.of())))
                .toList();
    }

    /** @param equipment the machine's name */
    static FindingFact fact(Finding finding, @Nullable String equipment, Catalogue catalogue, List<PhotoFact> photos) {
        Boolean agreed = finding.answer().map("yes"::equals).orElse(null);
        return new FindingFact(
                finding.id(),
                finding.equipmentId().orElse(null),
                equipment,
                FindingLevel.ofCode(finding.level()),
                finding.sentenceCode()
                        .flatMap(catalogue::findSentence)
                        .map(Sentence::wording)
                        .orElse(null),
                finding.text().orElse(null),
                finding.language().orElse(null),
                finding.toldTo().orElse(null),
                agreed,
                Boolean.FALSE.equals(agreed) ? "refused" : finding.nextStep().orElse(null),
                finding.clearedOn().orElse(null),
                photos);
    }
}
