package changeover.scheduling.closeout;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What the sheet's rules ask about the shop around the visit. */
interface Surroundings {

    boolean knowsPart(String partCode);

    boolean knowsSentence(String sentenceCode);

    /** The place that was named, else the technician's own van; empty when there is none such. */
    Optional<UUID> place(@Nullable UUID named);

    BigDecimal onHand(UUID place, String partCode);

    /** The licence cards that the technician holds today. */
    Set<String> tickets();
}
