package changeover.web.office;

import changeover.scheduling.closeout.ReadingInstruments;
import changeover.scheduling.closeout.Reports;
import changeover.web.session.Frame;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** What was measured at a closed visit, each value with what it was taken with. */
@ApplicationScoped
public class ReadingRows {

    /**
     * A reading.
     *
     * @param off whether something is to be done about it
     * @param instrument what it was taken with; empty where nobody said
     * @param last the last day of its calibration; empty where none was known
     * @param over whether its calibration was over then
     */
    public record Line(
            String machine, String words, String value, boolean off, String instrument, String last, boolean over) {}

    @Inject
    Reports reports;

    @Inject
    ReadingInstruments instruments;

    List<Line> of(UUID visit, Frame frame) {
        Map<UUID, ReadingInstruments.With> with = instruments.ofVisit(visit);
        return reports.of(visit).readings().stream()
                .map(reading -> {
                    ReadingInstruments.With taken = with.get(reading.id());
                    return new Line(
                            reading.equipment() == null ? "" : reading.equipment(),
                            reading.wording().in(frame.locale()),
                            ReviewPages.value(reading, frame.locale()),
                            reading.actOn(),
                            taken == null ? "" : taken.name(),
                            taken == null || taken.until() == null ? "" : frame.brief(taken.until()),
                            taken != null && taken.over());
                })
                .toList();
    }
}
