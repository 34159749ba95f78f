package changeover.scheduling.closeout;

import changeover.scheduling.closeout.Operation.Arrive;
import changeover.scheduling.closeout.Operation.Close;
import changeover.scheduling.closeout.Operation.Leave;
import changeover.scheduling.closeout.Operation.MinutesTold;
import changeover.scheduling.closeout.Operation.TakeBack;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.UUID;
import java.util.function.BiFunction;

/**
 * What stands on a visit's sheet after its operations, in the order they were taken: the earliest arrival, the last word on
 * every other subject, and every finding, part and photo that was not taken back.
 */
record Sheet(Map<String, Taken> standing) {

    private static final int MINUTES_OF_A_DAY = 24 * 60;

    static final Sheet BLANK = new Sheet(Map.of());

    Sheet {
        standing = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(standing));
    }

    Sheet with(Taken taken) {
        var next = new LinkedHashMap<>(standing);
        switch (taken.operation()) {
            case TakeBack(UUID operation) ->
                next.values().removeIf(earlier -> earlier.id().equals(operation));
            case Arrive() -> next.merge("arrive", taken, Sheet::earlier);
            default -> next.put(taken.operation().subject(taken.id()), taken);
        }
        return new Sheet(next);
    }

    /** Whoever types from paper presses that they are here long after those who were. */
    private static Taken earlier(Taken one, Taken other) {
        return other.at().isBefore(one.at()) ? other : one;
    }

    boolean isClosed() {
        return standing.containsKey("close");
    }

    Optional<Taken> of(String subject) {
        return Optional.ofNullable(standing.get(subject));
    }

    Optional<Taken> of(UUID operation) {
        return standing.values().stream()
                .filter(taken -> taken.id().equals(operation))
                .findFirst();
    }

    /** Everything of one kind that stands, in the order it was first said. */
    <T extends Operation, R> List<R> each(Class<T> kind, BiFunction<Taken, T, R> made) {
        return standing.values().stream()
                .filter(taken -> kind.isInstance(taken.operation()))
                .map(taken -> made.apply(taken, kind.cast(taken.operation())))
                .toList();
    }

    <T extends Operation> Optional<T> one(Class<T> kind) {
        return each(kind, (_, operation) -> operation).stream().findFirst();
    }

    /** Minutes as told, else from arriving to leaving by one device's clock, where that is a sensible time. */
    OptionalInt minutes() {
        Optional<MinutesTold> told = one(MinutesTold.class);
        if (told.isPresent()) {
            return OptionalInt.of(told.get().onSite());
        }
        Optional<Taken> arrived = of("arrive");
        Optional<Taken> left = of("leave");
        if (arrived.isEmpty()
                || left.isEmpty()
                || !arrived.get().device().equals(left.get().device())) {
            return OptionalInt.empty();
        }
        long minutes = Duration.between(arrived.get().at(), left.get().at()).toMinutes();
        return minutes >= 0 && minutes <= MINUTES_OF_A_DAY ? OptionalInt.of((int) minutes) : OptionalInt.empty();
    }

    int extraMinutes() {
        return one(MinutesTold.class).map(MinutesTold::extra).orElse(0);
    }

    Optional<String> shortWhy() {
        return one(Close.class).flatMap(close -> Optional.ofNullable(close.shortWhy()));
    }

    boolean hasLeft() {
        return one(Leave.class).isPresent();
    }
}
