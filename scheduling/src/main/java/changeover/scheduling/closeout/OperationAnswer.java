package changeover.scheduling.closeout;

import changeover.contracts.words.Refusal;
import java.util.List;
import java.util.UUID;

/**
 * What became of a sent operation. A refusal's field names the place in its body.
 *
 * @param refusals why not, all at once; empty unless it was refused
 */
public record OperationAnswer(UUID id, State state, List<Refusal> refusals) {

    /** Taken onto the sheet, refused for good, or waiting for the one it is based on. */
    public enum State {
        TAKEN("taken"),
        REFUSED("refused"),
        WAITING("waiting");

        private final String code;

        State(String code) {
            this.code = code;
        }

        public String code() {
            return code;
        }
    }

    public OperationAnswer {
        refusals = List.copyOf(refusals);
    }
}
