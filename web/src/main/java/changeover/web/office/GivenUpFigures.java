package changeover.web.office;

import changeover.billing.writeoffs.WriteOffs;
import changeover.contracts.words.OurAge;
import changeover.web.session.Frame;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;

/** Debts given up by the end of a day, less what was taken back, each sum with its part of the taxes. */
@ApplicationScoped
class GivenUpFigures {

    private static final LocalDate BEGINNING = LocalDate.of(OurAge.FIRST, 1, 1);

    /** @param from the first of the days up to the day, as an address names it */
    public record Line(String from, String amount, String tax) {}

    @Inject
    WriteOffs writeOffs;

    /** In the year of the day, and since the beginning. */
    List<Line> on(LocalDate day, Frame frame) {
        return List.of(since(day.withDayOfYear(1), day, frame), since(BEGINNING, day, frame));
    }

    private Line since(LocalDate from, LocalDate day, Frame frame) {
        WriteOffs.Sum sum = writeOffs.sum(from, day);
        return new Line(
                from.toString(), sum.amount().format(frame.locale()), sum.tax().format(frame.locale()));
    }
}
