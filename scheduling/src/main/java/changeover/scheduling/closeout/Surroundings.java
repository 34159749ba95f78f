package changeover.scheduling.closeout;

import changeover.contracts.customers.Equipment;
import changeover.contracts.words.Refusal;
import java.math.BigDecimal;
import java.util.List;
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

    /** What the kind of the machine does not allow of what was said of it. */
    List<Refusal> aboutMachine(Equipment.Facts facts);

    /** Whether the business has, or had, an instrument of this id. */
    boolean knowsInstrument(UUID id);

    /** Whether a machine of this id stands anywhere. */
    boolean knowsMachine(UUID id);
}
