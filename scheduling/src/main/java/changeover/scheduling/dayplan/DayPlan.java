package changeover.scheduling.dayplan;

import changeover.contracts.calendar.Window;
import changeover.contracts.words.Wording;
import changeover.scheduling.visits.VisitEnd;
import changeover.scheduling.visits.VisitKind;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A technician's day: the stops in order, and what must be in the van before the first. */
public record DayPlan(UUID technicianId, String technician, LocalDate day, List<Stop> stops) {

    public DayPlan {
        stops = List.copyOf(stops);
    }

    /**
     * One home of the day.
     *
     * @param home the address in one line
     * @param opens who lets us in, else who lives there, else who signs; null when nobody is known
     * @param ended how it ended; null while it is open
     * @param load what its tasks use up
     */
    public record Stop(
            UUID visitId,
            UUID homeId,
            String home,
            @Nullable String opens,
            @Nullable String phone,
            @Nullable BigDecimal latitude,
            @Nullable BigDecimal longitude,
            VisitKind kind,
            LocalTime starts,
            LocalTime ends,
            Window window,
            int minutes,
            int tasks,
            @Nullable VisitEnd ended,
            @Nullable String note,
            List<Load> load) {}

    /**
     * A part to put into the van for one machine.
     *
     * @param partKind code of the catalogue
     * @param size what says which one, as {@link changeover.contracts.catalogue.PartSize} writes what the machine's card says; null
     *     when any will do or nobody wrote it down
     * @param eachTime false for a part that is only taken along in case
     */
    public record Load(
            String partKind,
            Wording part,
            String unit,
            @Nullable String size,
            BigDecimal quantity,
            boolean eachTime,
            @Nullable String machine) {}

    /** What the whole day uses up: the same part of the same size counted together. */
    public List<Load> load() {
        return Loads.together(
                stops.stream().flatMap(stop -> stop.load().stream()).toList());
    }
}
