package changeover.web.office;

import changeover.billing.documents.band.HomeYear;
import changeover.contracts.customers.AccessCodes;
import changeover.contracts.words.Wording;
import changeover.web.session.MachineInWords;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Everything one must know of a home before its door opens, on one page.
 *
 * @param line the address in one line
 * @param place city's region and postal code
 * @param building the building it is a dwelling of, or none
 * @param common machines of the building that serve this home too
 * @param gone machines that were taken out
 * @param year the twelve months of the term, or of the calendar when nothing is promised
 * @param coming visits that are still to be made, the next first
 * @param past visits that ended, the latest first
 */
public record HouseCard(
        UUID id,
        String line,
        String place,
        @Nullable Building building,
        boolean toBeRead,
        @Nullable String gettingIn,
        List<PeopleOfHomes.Who> people,
        List<Danger> dangers,
        List<String> shut,
        List<AccessCodes.Listed> codes,
        @Nullable Deal deal,
        List<Open> findings,
        List<MachineInWords> machines,
        List<MachineInWords> common,
        List<Gone> gone,
        HomeYear year,
        List<Trip> coming,
        List<Trip> past) {

    public record Building(UUID id, String name) {}

    /** Something that can hurt whoever comes in. */
    public record Danger(UUID id, String kind, String note, LocalDate seen) {}

    /**
     * The agreement that counts today, or the next.
     *
     * @param state a code of AgreementState
     * @param saidYes the day of the yes, or none
     */
    public record Deal(
            UUID id,
            int number,
            Wording plan,
            LocalDate from,
            LocalDate last,
            String state,
            @Nullable LocalDate saidYes) {}

    /** What must not be used, or a finding that nobody has put right yet. */
    public record Open(
            String level,
            @Nullable String machine,
            String text,
            LocalDate day,
            @Nullable String toldTo,
            @Nullable String answer) {}

    public record Gone(UUID id, String name, LocalDate day) {}

    /**
     * A visit in a line.
     *
     * @param standing a code of YearOfHome.Standing
     * @param day the day it has or ended on; null while it has none
     */
    public record Trip(
            UUID id,
            String kind,
            String standing,
            @Nullable LocalDate day,
            LocalDate first,
            LocalDate last,
            @Nullable LocalTime starts,
            @Nullable String technician,
            int minutes,
            int tasks,
            @Nullable String why) {}

    /** Whether anything was ever promised in this year. */
    public boolean promised() {
        return !year.rows().isEmpty() || !year.household().isEmpty();
    }
}
