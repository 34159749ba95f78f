package changeover.billing.notices;

import java.util.UUID;

/**
 * Asked right before a message leaves, in the transaction that hands it over: whether what it says still holds. One that does
 * not is withdrawn and never leaves.
 */
public interface StillTrue {

    /** The kind of message that this answers for. */
    String kind();

    /** @param aboutId what the message is about */
    boolean holds(UUID aboutId);

    /** The message about this was withdrawn. */
    void withdrawn(UUID aboutId);
}
