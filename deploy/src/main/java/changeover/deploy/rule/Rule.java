package changeover.deploy.rule;

import com.fasterxml.jackson.databind.JsonNode;

/** One rule that can be asked. */
interface Rule {
    String name();

    /** What it answers, in one sentence. */
    String says();

    /** An example of its input. */
    String example();

    /**
     * The answer, as one JSON document.
     *
     * @throws IllegalArgumentException with a sentence, when the question cannot be read
     */
    JsonNode answer(Question question);
}
