package changeover.scheduling.visits;

import changeover.contracts.calendar.Window;
import changeover.contracts.tenants.Ids;
import changeover.contracts.tenants.OwnedWithGivenId;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** One going to a home, on a day inside its window, with a checklist of its own. */
@Entity
@Table(name = "visit")
public class Visit extends OwnedWithGivenId {

    @Column(name = "home_id", updatable = false)
    private UUID homeId = new UUID(0, 0);

    @Column(name = "agreement_id", updatable = false)
    private @Nullable UUID agreementId;

    @Column(updatable = false)
    private String kind = "";

    @Column(name = "window_from")
    private LocalDate windowFrom = LocalDate.EPOCH;

    @Column(name = "window_until")
    private LocalDate windowUntil = LocalDate.EPOCH;

    private int minutes;

    @Column(name = "answers_id", updatable = false)
    private @Nullable UUID answersId;

    private @Nullable String note;

    protected Visit() {}

    private Visit(UUID id) {
        super(id);
    }

    /** A visit that no plan promised: somebody rang, or an earlier visit left something open. */
    static Visit beyondThePlan(NewVisit facts, int minutes) {
        var visit = new Visit(Ids.next());
        visit.homeId = facts.homeId();
        visit.agreementId = facts.agreementId();
        visit.kind = facts.kind().code();
        visit.windowFrom = facts.window().from();
        visit.windowUntil = facts.window().until();
        visit.minutes = minutes;
        visit.answersId = facts.answersId();
        visit.note = facts.note();
        return visit;
    }

    /** Whoever goes there reads other words. */
    void readAgain(String words) {
        note = words;
    }

    public UUID homeId() {
        return homeId;
    }

    public Optional<UUID> agreementId() {
        return Optional.ofNullable(agreementId);
    }

    public VisitKind kind() {
        return VisitKind.ofCode(kind);
    }

    public Window window() {
        return new Window(windowFrom, windowUntil);
    }

    /** Planned minutes on site. */
    public int minutes() {
        return minutes;
    }

    /** The visit whose open matter this one answers. */
    public Optional<UUID> answersId() {
        return Optional.ofNullable(answersId);
    }

    public Optional<String> note() {
        return Optional.ofNullable(note);
    }
}
