package changeover.billing.tax;

import changeover.contracts.words.Refusal;
import java.util.List;

/** A place is known, with its taxes in the order printed, or it is not, and then nothing may be issued. */
public sealed interface TaxAnswer {

    record Known(List<Tax> taxes) implements TaxAnswer {}

    record Unknown(Refusal refusal) implements TaxAnswer {}
}
