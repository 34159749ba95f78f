package changeover.contracts.catalogue;

import changeover.contracts.words.Wording;

/** What may hurt somebody at a task, said before it; always ends with local codes and licensed people. */
public record Caution(String code, Wording title, Wording wording) {}
