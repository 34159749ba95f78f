package changeover.scheduling.closeout;

import changeover.contracts.tenants.OwnedWithGivenId;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Something seen at a home, in the words of the business or in free text, and what the customer answered. */
@Entity
@Table(name = "finding")
public class Finding extends OwnedWithGivenId {

    @Column(name = "visit_id")
    private UUID visitId = new UUID(0, 0);

    @Column(name = "home_id")
    private UUID homeId = new UUID(0, 0);

    @Column(name = "equipment_id")
    private @Nullable UUID equipmentId;

    @Column(name = "visit_task_id")
    private @Nullable UUID visitTaskId;

    private String level = "";

    @Column(name = "sentence_code")
    private @Nullable String sentenceCode;

    private @Nullable String text;

    private @Nullable String language;

    @Column(name = "told_to")
    private @Nullable String toldTo;

    private @Nullable String answer;

    @Column(name = "next_step")
    private @Nullable String nextStep;

    private @Nullable String ticket;

    private LocalDate day = LocalDate.EPOCH;

    @Column(name = "cleared_on")
    private @Nullable LocalDate clearedOn;

    @Column(name = "cleared_by")
    private @Nullable UUID clearedBy;

    @Column(name = "cleared_why")
    private @Nullable String clearedWhy;

    /** For Hibernate. */
    protected Finding() {}

    private Finding(UUID id) {
        super(id);
    }

    static Finding of(UUID id, VisitAtHand visit, Operation.Found found, @Nullable String ticket, LocalDate day) {
        var row = new Finding(id);
        row.visitId = visit.id();
        row.homeId = visit.homeId();
        row.equipmentId = found.equipment();
        row.visitTaskId = found.task();
        row.level = found.level();
        row.sentenceCode = found.sentence();
        row.text = found.text();
        row.language = found.text() == null ? null : found.language();
        row.toldTo = found.toldTo();
        row.answer = found.agreed() == null ? null : found.agreed() ? "yes" : "no";
        row.nextStep = found.next();
        row.ticket = ticket;
        row.day = day;
        return row;
    }

    /** It is put right, or no longer true: by whom, on which day and how. */
    void clear(LocalDate on, UUID by, String why) {
        clearedOn = on;
        clearedBy = by;
        clearedWhy = why;
    }

    public UUID visitId() {
        return visitId;
    }

    public UUID homeId() {
        return homeId;
    }

    public Optional<UUID> equipmentId() {
        return Optional.ofNullable(equipmentId);
    }

    public Optional<UUID> visitTaskId() {
        return Optional.ofNullable(visitTaskId);
    }

    /** information, recommended, urgent or do_not_use. */
    public String level() {
        return level;
    }

    public Optional<String> sentenceCode() {
        return Optional.ofNullable(sentenceCode);
    }

    public Optional<String> text() {
        return Optional.ofNullable(text);
    }

    public Optional<String> language() {
        return Optional.ofNullable(language);
    }

    public Optional<String> toldTo() {
        return Optional.ofNullable(toldTo);
    }

    /** yes or no, as the customer said. */
    public Optional<String> answer() {
        return Optional.ofNullable(answer);
    }

    /** visit or estimate. */
    public Optional<String> nextStep() {
        return Optional.ofNullable(nextStep);
    }

    /** Who may open or restore: refrigerant, gas or electrical. */
    public Optional<String> ticket() {
        return Optional.ofNullable(ticket);
    }

    public LocalDate day() {
        return day;
    }

    public Optional<LocalDate> clearedOn() {
        return Optional.ofNullable(clearedOn);
    }

    public Optional<UUID> clearedBy() {
        return Optional.ofNullable(clearedBy);
    }

    public Optional<String> clearedWhy() {
        return Optional.ofNullable(clearedWhy);
    }
}
