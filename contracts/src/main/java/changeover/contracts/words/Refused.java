package changeover.contracts.words;

import java.util.List;

/** A verb that was not done, with the sentences for the person who asked; rolls the transaction back. */
public class Refused extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient List<Refusal> refusals;

    public Refused(Refusal refusal) {
        this(List.of(refusal));
    }

    /** @param refusals one or more, in the order of the form's fields */
    public Refused(List<Refusal> refusals) {
        super(refusals.toString());
        this.refusals = List.copyOf(refusals);
    }

    public List<Refusal> refusals() {
        return refusals;
    }

    public Refusal first() {
        return refusals.getFirst();
    }
}
