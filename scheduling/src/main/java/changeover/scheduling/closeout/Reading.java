package changeover.scheduling.closeout;

import changeover.contracts.tenants.OwnedWithGivenId;
import changeover.contracts.words.Wording;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A value measured at a visit, in SI, beside what was typed and where it stood against its band that day. */
@Entity
@Table(name = "reading")
public class Reading extends OwnedWithGivenId {

    @Column(name = "visit_id")
    private UUID visitId = new UUID(0, 0);

    @Column(name = "visit_task_id")
    private UUID visitTaskId = new UUID(0, 0);

    @Column(name = "home_id")
    private UUID homeId = new UUID(0, 0);

    @Column(name = "equipment_id")
    private @Nullable UUID equipmentId;

    private String code = "";

    private @Nullable BigDecimal value;

    private @Nullable String unit;

    @Column(name = "entered_value")
    private String enteredValue = "";

    @Column(name = "entered_unit")
    private @Nullable String enteredUnit;

    @Column(name = "running_state")
    private @Nullable String runningState;

    private @Nullable BigDecimal volts;

    private @Nullable BigDecimal low;

    private @Nullable BigDecimal high;

    private String standing = "";

    @Column(name = "act_on")
    private boolean actOn;

    @Column(name = "action_en")
    private @Nullable String actionEn;

    @Column(name = "action_fr")
    private @Nullable String actionFr;

    private LocalDate day = LocalDate.EPOCH;

    @Column(name = "instrument_id")
    private @Nullable UUID instrumentId;

    /** For Hibernate. */
    protected Reading() {}

    private Reading(UUID id) {
        super(id);
    }

    static Reading of(VisitAtHand visit, JudgedReading judged, LocalDate day) {
        var row = new Reading(judged.id());
        row.visitId = visit.id();
        row.homeId = visit.homeId();
        row.visitTaskId = judged.task();
        row.equipmentId = judged.equipment();
        row.code = judged.code();
        row.value = judged.value();
        row.unit = judged.unit();
        row.enteredValue = judged.enteredValue();
        row.enteredUnit = judged.enteredUnit();
        row.runningState = judged.running();
        row.volts = judged.volts();
        row.low = judged.low();
        row.high = judged.high();
        row.standing = judged.standing();
        row.actOn = judged.actOn();
        row.actionEn = judged.beyond() == null ? null : judged.beyond().en();
        row.actionFr = judged.beyond() == null ? null : judged.beyond().fr();
        row.day = day;
        row.instrumentId = judged.instrument();
        return row;
    }

    public UUID visitId() {
        return visitId;
    }

    public UUID visitTaskId() {
        return visitTaskId;
    }

    public UUID homeId() {
        return homeId;
    }

    public Optional<UUID> equipmentId() {
        return Optional.ofNullable(equipmentId);
    }

    public String code() {
        return code;
    }

    /** In the SI unit; empty for yes or no, words and days. */
    public Optional<BigDecimal> value() {
        return Optional.ofNullable(value);
    }

    /** The SI unit. */
    public Optional<String> unit() {
        return Optional.ofNullable(unit);
    }

    public String enteredValue() {
        return enteredValue;
    }

    public Optional<String> enteredUnit() {
        return Optional.ofNullable(enteredUnit);
    }

    public Optional<String> runningState() {
        return Optional.ofNullable(runningState);
    }

    /** Measured while the reading was taken. */
    public Optional<BigDecimal> volts() {
        return Optional.ofNullable(volts);
    }

    /** Lower end of the expected band, in the SI unit. */
    public Optional<BigDecimal> low() {
        return Optional.ofNullable(low);
    }

    /** Upper end of the expected band, in the SI unit. */
    public Optional<BigDecimal> high() {
        return Optional.ofNullable(high);
    }

    /** Past its limit, or outside its band where it has no limit: what to do then applies. */
    public boolean actOn() {
        return actOn;
    }

    /** below, within, above or not_judged, against the band. */
    public String standing() {
        return standing;
    }

    /** What to do; empty unless it is to be acted on. */
    public Optional<Wording> beyond() {
        return actionEn == null || actionFr == null ? Optional.empty() : Optional.of(new Wording(actionEn, actionFr));
    }

    public LocalDate day() {
        return day;
    }
}
