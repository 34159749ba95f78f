package changeover.contracts.takeover;

import java.time.LocalDate;
import java.util.List;

/** One list that a running shop brings along as a file; whoever keeps such rows reads it. */
public interface BroughtList {

    /** As its words and its address name it: {@code last-times}. */
    String code();

    List<Title> titles();

    /** Lists are written in the order of their turns, since a later one names what an earlier one brought. */
    int turn();

    /**
     * Writes the good rows and says what is wrong with the others. What stands already is written no second time.
     *
     * @param day of the take-over
     */
    Brought bring(BroughtFile file, LocalDate day);
}
