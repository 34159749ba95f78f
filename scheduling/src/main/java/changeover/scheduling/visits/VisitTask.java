package changeover.scheduling.visits;

import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.CatalogueJson;
import changeover.contracts.catalogue.Grounds;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.catalogue.Task;
import changeover.contracts.tenants.Ids;
import changeover.contracts.tenants.OwnedWithGivenId;
import changeover.contracts.words.Wording;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;

/** A line of a visit's checklist, in the words it was promised in, with the reason it is due. */
@Entity
@Table(name = "visit_task")
public class VisitTask extends OwnedWithGivenId {

    @Column(name = "visit_id", updatable = false)
    private UUID visitId = new UUID(0, 0);

    @Column(name = "equipment_id", updatable = false)
    private @Nullable UUID equipmentId;

    @Column(name = "task_code", updatable = false)
    private String taskCode = "";

    @Column(name = "wording_en", updatable = false)
    private String wordingEn = "";

    @Column(name = "wording_fr", updatable = false)
    private String wordingFr = "";

    @Column(updatable = false)
    private String who = "technician";

    @Column(updatable = false)
    private @Nullable String ticket;

    @Column(updatable = false)
    private int minutes;

    @Column(name = "due_from", updatable = false)
    private LocalDate dueFrom = LocalDate.EPOCH;

    @Column(name = "due_until", updatable = false)
    private LocalDate dueUntil = LocalDate.EPOCH;

    @Column(updatable = false)
    private String act = "do";

    @Column(name = "reason_en", updatable = false)
    private String reasonEn = "";

    @Column(name = "reason_fr", updatable = false)
    private String reasonFr = "";

    @Column(updatable = false)
    private String basis = "";

    @JdbcTypeCode(SqlTypes.JSON)
    @Column(updatable = false)
    private @Nullable String body;

    @Column(updatable = false)
    private int position;

    protected VisitTask() {}

    private VisitTask(UUID id) {
        super(id);
    }

    /** A line of a visit that no plan promised. */
    static VisitTask of(Visit visit, Task task, NewVisit.NewTask facts, Optional<String> body, int position) {
        var line = new VisitTask(Ids.next());
        line.visitId = visit.id();
        line.equipmentId = facts.equipmentId();
        line.taskCode = task.code();
        line.wordingEn = task.wording().en();
        line.wordingFr = task.wording().fr();
        line.who = task.who().code();
        line.ticket = task.ticket().kind().orElse(null);
        line.minutes = task.minutes();
        line.dueFrom = visit.window().from();
        line.dueUntil = visit.window().until();
        line.reasonEn = facts.reason().en();
        line.reasonFr = facts.reason().fr();
        line.basis = task.basis();
        line.body = body.orElse(null);
        line.position = position;
        return line;
    }

    public UUID visitId() {
        return visitId;
    }

    /** Empty for a task of the home as a whole. */
    public Optional<UUID> equipmentId() {
        return Optional.ofNullable(equipmentId);
    }

    public String taskCode() {
        return taskCode;
    }

    public Wording wording() {
        return new Wording(wordingEn, wordingFr);
    }

    public String who() {
        return who;
    }

    /** The licence card it asks for: refrigerant, gas or electrical. */
    public Optional<String> ticket() {
        return Optional.ofNullable(ticket);
    }

    public int minutes() {
        return minutes;
    }

    public Window due() {
        return new Window(dueFrom, dueUntil);
    }

    /** {@code do}, {@code check} or {@code replace}. */
    public String act() {
        return act;
    }

    public Wording reason() {
        return new Wording(reasonEn, reasonFr);
    }

    public String basis() {
        return basis;
    }

    /** What it rests on, with its source where that is still known. */
    public Grounds grounds(OwnCatalogue.Own own) {
        return Grounds.kept(
                taskCode, equipmentId, basis, body().map(json -> CatalogueJson.read(json, Task.class)), own);
    }

    /** The task as the business wrote it itself, as JSON; empty when the shipped catalogue has it under its code. */
    public Optional<String> body() {
        return Optional.ofNullable(body);
    }

    public int position() {
        return position;
    }
}
