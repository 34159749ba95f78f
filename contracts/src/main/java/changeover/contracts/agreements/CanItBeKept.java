package changeover.contracts.agreements;

import changeover.contracts.calendar.Term;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Answers, before anything is sold, whether so many visits keep what would be promised. Who plans visits answers. */
public interface CanItBeKept {

    /**
     * The year as it would be planned if the yes were said now.
     *
     * @param homeId the home, whose past counts; null while a plan is only being designed
     * @param visits how many visits are sold
     */
    OfferForecast forecast(@Nullable UUID homeId, Term term, int visits, List<Offer.Promised> promises);
}
