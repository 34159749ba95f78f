package changeover.scheduling.closeout;

import changeover.contracts.customers.Equipment;
import java.math.BigDecimal;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * One thing a technician says about a visit. A later one about the same subject stands instead of the earlier; findings,
 * parts, photos and machines stand beside each other until taken back.
 */
public sealed interface Operation {

    record Arrive() implements Operation {}

    /**
     * @param reason why it is deferred, or does not apply
     * @param cause of a reading that needs warm air and is deferred: cold, or other; null where nobody says
     */
    record TaskAnswered(
            UUID task,
            Outcome outcome,
            @Nullable String reason,
            @Nullable String cause) implements Operation {

        public TaskAnswered(UUID task, Outcome outcome, @Nullable String reason) {
            this(task, outcome, reason, null);
        }
    }

    /**
     * @param value as typed: a number with a point or a comma, yes or no, a day, or words
     * @param unit code of the unit it was typed in; null for the reading's own
     * @param running state the machine ran in; null for the reading's own
     * @param volts measured while it was taken
     * @param instrument what it was taken with; null where nobody says
     */
    record Measured(
            UUID task,
            String code,
            String value,
            @Nullable String unit,
            @Nullable String running,
            @Nullable BigDecimal volts,
            @Nullable UUID instrument)
            implements Operation {

        /** Nobody says what it was taken with. */
        public Measured(
                UUID task,
                String code,
                String value,
                @Nullable String unit,
                @Nullable String running,
                @Nullable BigDecimal volts) {
            this(task, code, value, unit, running, volts, null);
        }
    }

    /**
     * @param level code: information, recommended, urgent or do_not_use
     * @param sentence code of one of the business's sentences, or null with {@code text} and its {@code language}
     * @param toldTo who at the home was told
     * @param agreed the customer's answer; null when there was nothing to answer
     * @param next visit or estimate: what is to follow; null for nothing
     * @param ticket who may open or restore: refrigerant, gas or electrical; null for the task's own
     */
    record Found(
            String level,
            @Nullable String sentence,
            @Nullable String text,
            @Nullable String language,
            @Nullable UUID equipment,
            @Nullable UUID task,
            @Nullable String toldTo,
            @Nullable Boolean agreed,
            @Nullable String next,
            @Nullable String ticket)
            implements Operation {}

    /** @param sha256 of the bytes that the device holds, in small hexadecimal letters */
    record Photographed(
            String sha256,
            @Nullable UUID finding,
            @Nullable UUID task,
            @Nullable String caption) implements Operation {}

    /**
     * @param place where it was taken from; null for the technician's own van
     * @param why plan, repair, extra or warranty
     * @param shortWhy why more was used than the place held; null when it held enough
     * @param oldSerial of the part that came out, where it has one
     * @param newSerial of the part that went in, where it has one
     */
    record PartTaken(
            String part,
            BigDecimal quantity,
            @Nullable UUID place,
            @Nullable UUID equipment,
            String why,
            @Nullable String shortWhy,
            @Nullable String oldSerial,
            @Nullable String newSerial)
            implements Operation {

        /** One without a serial. */
        public PartTaken(
                String part,
                BigDecimal quantity,
                @Nullable UUID place,
                @Nullable UUID equipment,
                String why,
                @Nullable String shortWhy) {
            this(part, quantity, place, equipment, why, shortWhy, null, null);
        }
    }

    /**
     * @param onSite whole minutes at the home
     * @param extra of these, the minutes for work beyond the visit's tasks
     */
    record MinutesTold(int onSite, int extra, @Nullable String extraWhy) implements Operation {}

    /**
     * A machine that stands in the home and that nobody had written down; it carries the operation's own id.
     *
     * @param facts as its kind declares them; its owner is whoever signs for the home
     */
    record MachineFound(Equipment.Facts facts) implements Operation {}

    record HouseholdNote(String text) implements Operation {}

    /** Exactly one of the two is there. */
    record Received(@Nullable String by, @Nullable String nobodyWhy) implements Operation {}

    record Leave() implements Operation {}

    /** @param shortWhy why more was used than the van held, where no part said so itself */
    record Close(@Nullable String shortWhy) implements Operation {}

    /** Takes back an earlier reading, finding, part or photo; on a closed sheet an hour of coming or leaving too. */
    record TakeBack(UUID operation) implements Operation {}

    /** What it is about; of two with the same subject the later stands. */
    default String subject(UUID id) {
        return switch (this) {
            case Arrive() -> "arrive";
            case TaskAnswered task -> "task:" + task.task();
            case Measured reading -> "reading:" + reading.task() + ":" + reading.code();
            case Found _, Photographed _, PartTaken _, MachineFound _, TakeBack _ -> id.toString();
            case MinutesTold _ -> "minutes";
            case HouseholdNote _ -> "note";
            case Received _ -> "received";
            case Leave() -> "leave";
            case Close _ -> "close";
        };
    }

    /** The word for it on the wire. */
    default String kind() {
        return switch (this) {
            case Arrive() -> "arrive";
            case TaskAnswered _ -> "task";
            case Measured _ -> "reading";
            case Found _ -> "finding";
            case Photographed _ -> "photo";
            case PartTaken _ -> "part";
            case MachineFound _ -> "machine";
            case MinutesTold _ -> "minutes";
            case HouseholdNote _ -> "note";
            case Received _ -> "received";
            case Leave() -> "leave";
            case Close _ -> "close";
            case TakeBack _ -> "take_back";
        };
    }
}
