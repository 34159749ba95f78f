package changeover.scheduling.closeout;

import changeover.contracts.catalogue.ReadingSpec;
import changeover.contracts.catalogue.UnitOfMeasure;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Wording;
import changeover.scheduling.closeout.Operation.Arrive;
import changeover.scheduling.closeout.Operation.Close;
import changeover.scheduling.closeout.Operation.Found;
import changeover.scheduling.closeout.Operation.HouseholdNote;
import changeover.scheduling.closeout.Operation.Leave;
import changeover.scheduling.closeout.Operation.MachineFound;
import changeover.scheduling.closeout.Operation.Measured;
import changeover.scheduling.closeout.Operation.MinutesTold;
import changeover.scheduling.closeout.Operation.PartTaken;
import changeover.scheduling.closeout.Operation.Photographed;
import changeover.scheduling.closeout.Operation.Received;
import changeover.scheduling.closeout.Operation.TakeBack;
import changeover.scheduling.closeout.Operation.TaskAnswered;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What may be written on a visit's sheet: only about this visit's tasks and this home's machines, by whom the task's
 * ticket allows, and closed only when every task has an outcome, the minutes are known and somebody received the work or
 * it is said why nobody.
 *
 * @param booked the closed sheet that is corrected, whose parts have left their places already; else a blank one
 */
record SheetRules(VisitAtHand visit, Surroundings shop, Sheet booked) {

    private static final Map<String, Wording> TICKETS = Map.of(
            "refrigerant", new Wording("refrigerant", "de frigoriste"),
            "gas", new Wording("gas", "de gaz"),
            "electrical", new Wording("electrical", "d’électricité"));

    /** Of an open sheet, whose parts have not left their places yet. */
    SheetRules(VisitAtHand visit, Surroundings shop) {
        this(visit, shop, Sheet.BLANK);
    }

    /** Why the operation of that id is not taken onto the open sheet; empty when it is. */
    List<Refusal> refusals(Sheet sheet, UUID id, Operation operation) {
        if (operation instanceof MachineFound && shop.knowsMachine(id)) {
            return List.of(Refusal.of("closeout.operation-elsewhere"));
        }
        return refusals(sheet, operation);
    }

    List<Refusal> refusals(Sheet sheet, Operation operation) {
        if (sheet.isClosed()) {
            return List.of(Refusal.of("closeout.closed-already"));
        }
        if (visit.ended() != null) {
            return List.of(Refusal.of("closeout.visit-ended"));
        }
        return about(sheet, operation);
    }

    /** The same for a correction of a closed sheet. */
    List<Refusal> about(Sheet sheet, Operation operation) {
        return switch (operation) {
            case Arrive(), Leave() -> List.of();
            case MinutesTold _, HouseholdNote _, Received _ -> List.of();
            case TaskAnswered answered -> aboutTask(answered);
            case Measured measured -> aboutReading(measured);
            case Found found -> aboutFinding(sheet, found);
            case Photographed photo -> aboutPhoto(sheet, photo);
            case PartTaken part -> aboutPart(sheet, part);
            case MachineFound found -> new MachineRules(visit, shop).refusals(sheet, found);
            case TakeBack back -> aboutTakingBack(sheet, back);
            case Close close -> toClose(sheet, close);
        };
    }

    private List<Refusal> aboutTask(TaskAnswered answered) {
        TaskAtHand task = visit.tasks().get(answered.task());
        if (task == null) {
            return refused("task-not-found", "task");
        }
        String ticket = task.ticket();
        if (answered.outcome() == Outcome.DONE
                && ticket != null
                && !shop.tickets().contains(ticket)) {
            return List.of(Refusal.of("closeout.ticket", Map.of("ticket", ticket(ticket)))
                    .at("outcome"));
        }
        return List.of();
    }

    private List<Refusal> aboutReading(Measured measured) {
        TaskAtHand task = visit.tasks().get(measured.task());
        if (task == null) {
            return refused("task-not-found", "task");
        }
        ReadingSpec spec = task.reading(measured.code()).orElse(null);
        if (spec == null) {
            return refused("reading-not-asked", "code");
        }
        UUID instrument = measured.instrument();
        if (instrument != null && !shop.knowsInstrument(instrument)) {
            return refused("instrument-not-found", "instrument");
        }
        return switch (spec.form()) {
            case NUMBER -> aboutNumber(spec, measured);
            case YES_NO ->
                Set.of("yes", "no").contains(measured.value()) ? List.of() : refused("reading-yes-no", "value");
            case DATE -> isDay(measured.value()) ? List.of() : refused("reading-day", "value");
            case TEXT -> List.of();
        };
    }

    private static List<Refusal> aboutNumber(ReadingSpec spec, Measured measured) {
        if (Body.typed(measured.value()).isEmpty()) {
            return refused("operation.number", "value");
        }
        UnitOfMeasure own = UnitOfMeasure.ofCode(spec.unit() == null ? UnitOfMeasure.ONE.code() : spec.unit());
        String said = measured.unit();
        if (said != null
                && UnitOfMeasure.find(said).filter(unit -> unit.convertsTo(own)).isEmpty()) {
            return List.of(Refusal.of("closeout.reading-unit", Map.of("unit", own.symbol()))
                    .at("unit"));
        }
        return List.of();
    }

    private static boolean isDay(String said) {
        try {
            int year = LocalDate.parse(said.length() == 7 ? said + "-01" : said).getYear();
            return year >= 1900 && year <= 2200;
        } catch (DateTimeParseException notADay) {
            return false;
        }
    }

    private List<Refusal> aboutFinding(Sheet sheet, Found found) {
        List<Refusal> refusals = new ArrayList<>();
        if (found.sentence() != null && !shop.knowsSentence(found.sentence())) {
            refusals.addAll(refused("sentence-not-found", "sentence"));
        }
        refusals.addAll(aboutMachine(sheet, found.equipment()));
        refusals.addAll(aboutOptionalTask(found.task()));
        return refusals;
    }

    private List<Refusal> aboutPhoto(Sheet sheet, Photographed photo) {
        List<Refusal> refusals = new ArrayList<>(aboutOptionalTask(photo.task()));
        UUID finding = photo.finding();
        if (finding != null
                && sheet.of(finding)
                        .filter(taken -> taken.operation() instanceof Found)
                        .isEmpty()) {
            refusals.addAll(refused("finding-not-found", "finding"));
        }
        return refusals;
    }

    private static List<Refusal> aboutTakingBack(Sheet sheet, TakeBack back) {
        if (MachineRules.isNamed(sheet, back.operation())) {
            return refused("machine-named", "operation");
        }
        return sheet.of(back.operation())
                        .map(Taken::operation)
                        .filter(earlier -> switch (earlier) {
                            case Found _, Photographed _, PartTaken _, Measured _ -> true;
                            case MachineFound _ -> !sheet.isClosed();
                            case Arrive _, Leave _ -> sheet.isClosed();
                            case TaskAnswered _, MinutesTold _, HouseholdNote _ -> false;
                            case Received _, Close _, TakeBack _ -> false;
                        })
                        .isPresent()
                ? List.of()
                : refused("take-back", "operation");
    }

    private List<Refusal> aboutPart(Sheet sheet, PartTaken part) {
        List<Refusal> refusals = new ArrayList<>(aboutMachine(sheet, part.equipment()));
        refusals.addAll(new PartRules(shop, booked).refusals(sheet, part));
        return refusals;
    }

    private List<Refusal> toClose(Sheet sheet, Close close) {
        List<Refusal> refusals = new ArrayList<>(unfinished(sheet));
        refusals.addAll(new PartRules(shop, booked).toClose(sheet, close));
        return refusals;
    }

    /** What a closed sheet may not lack; an amended one neither. */
    List<Refusal> unfinished(Sheet sheet) {
        List<Refusal> refusals = new ArrayList<>();
        visit.tasks().values().stream()
                .filter(task -> sheet.of("task:" + task.id()).isEmpty())
                .map(task -> Refusal.of("closeout.task-open", Map.of("task", task.wording()))
                        .at("task." + task.id()))
                .forEach(refusals::add);
        if (sheet.of("received").isEmpty()) {
            refusals.addAll(refused("received-by", "received"));
        }
        if (sheet.minutes().isEmpty()) {
            refusals.addAll(refused("minutes", "minutes"));
        }
        return refusals;
    }

    private List<Refusal> aboutMachine(Sheet sheet, @Nullable UUID machine) {
        return machine == null || new MachineRules(visit, shop).stands(sheet, machine)
                ? List.of()
                : refused("equipment-not-found", "equipment");
    }

    private List<Refusal> aboutOptionalTask(@Nullable UUID task) {
        return task == null || visit.tasks().containsKey(task) ? List.of() : refused("task-not-found", "task");
    }

    static List<Refusal> refused(String code, String field) {
        return List.of(Refusal.of("closeout." + code).at(field));
    }

    static Wording ticket(String kind) {
        return TICKETS.getOrDefault(kind, new Wording(kind, kind));
    }
}
