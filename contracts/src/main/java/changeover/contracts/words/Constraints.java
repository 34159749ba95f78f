package changeover.contracts.words;

import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.postgresql.util.PSQLException;

/**
 * Turns what the database refused into a sentence: the constraint's name is the sentence's code. A deferred constraint
 * speaks only at commit, and then only in a suppressed exception, so causes and suppressed are both walked.
 */
public final class Constraints {

    private Constraints() {}

    /** The refusal that a constraint's name stands for; empty when the failure is a bug, which stays an exception. */
    public static Optional<Refusal> refusal(Throwable failure) {
        return name(failure, Collections.newSetFromMap(new IdentityHashMap<>()))
                .map(name -> "constraint." + name)
                .filter(Refusals::knows)
                .map(code -> Refusal.of(code, Map.of()));
    }

    /** The name of the constraint that the database gave, wherever it hides. */
    public static Optional<String> name(Throwable failure) {
        return name(failure, Collections.newSetFromMap(new IdentityHashMap<>()));
    }

    private static Optional<String> name(@Nullable Throwable failure, Set<Throwable> seen) {
        if (failure == null || !seen.add(failure)) {
            return Optional.empty();
        }
        if (failure instanceof PSQLException refused && refused.getServerErrorMessage() != null) {
            String constraint = refused.getServerErrorMessage().getConstraint();
            if (constraint != null) {
                return Optional.of(constraint);
            }
        }
        for (Throwable suppressed : failure.getSuppressed()) {
            Optional<String> found = name(suppressed, seen);
            if (found.isPresent()) {
                return found;
            }
        }
        return name(failure.getCause(), seen);
    }
}
