package changeover.scheduling.closeout;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.UUID;

/** Ids that clients made: read strictly, and derived where one request stands for several operations. */
public final class Ids {

    private static final String SHAPE = "[0-9a-fA-F]{8}(-[0-9a-fA-F]{4}){3}-[0-9a-fA-F]{12}";

    private Ids() {}

    public static Optional<UUID> read(String said) {
        return said.matches(SHAPE) ? Optional.of(UUID.fromString(said)) : Optional.empty();
    }

    /** The same id each time for the same part of the same request, so that a request sent twice changes nothing. */
    public static UUID derived(UUID request, String part) {
        return UUID.nameUUIDFromBytes((request + "/" + part).getBytes(StandardCharsets.UTF_8));
    }
}
