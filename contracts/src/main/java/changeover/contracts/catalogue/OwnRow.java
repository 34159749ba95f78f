package changeover.contracts.catalogue;

import java.util.UUID;

/**
 * Something that a business added to the catalogue, with the version that its form is filled on.
 *
 * @param <T> a kind, a task or an interval
 */
public record OwnRow<T>(UUID id, T body, int version) {}
