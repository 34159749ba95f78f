package changeover.scheduling.returns;

import changeover.contracts.words.Wording;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A free return with what it answers.
 *
 * @param answeredOn the day on which the first visit was kept
 * @param technician who kept the first visit; empty where nobody knows
 * @param part name of the part it is about
 * @param kind code of the kind of machine it is about
 * @param day on which the return was kept; null while it was not
 * @param minutes on site at the return; nought while it was not kept
 */
public record ReturnVisit(
        UUID visitId,
        UUID answersId,
        UUID homeId,
        @Nullable LocalDate answeredOn,
        String technician,
        ReturnCause cause,
        @Nullable Wording part,
        @Nullable String kind,
        String words,
        @Nullable LocalDate day,
        int minutes) {}
