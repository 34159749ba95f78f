package changeover.scheduling.visits;

import changeover.contracts.words.Wording;

/** A promise that the sold visits cannot keep, said by name instead of being forgotten. */
public record Unkept(Promise promise, Wording why) {}
