package changeover.billing.documents;

import changeover.billing.documents.band.HomeYear;
import changeover.billing.documents.band.Turn;
import changeover.contracts.calendar.Changeover;
import changeover.contracts.calendar.Window;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** One invented home's twelve months. */
final class ReportYears {

    private static final LocalDate DAY = LocalDate.of(2026, 5, 27);

    private ReportYears() {}

    static HomeYear year() {
        List<HomeYear.Row> rows = List.of(
                row("Outdoor heat pump", "2026-04-15", "2026-06-15", "2026-09-01", "2026-11-15"),
                row("Indoor coil, air handler", "2026-04-01", "2026-06-15", "2026-09-01", "2026-11-15"),
                row("Filter slot, 16 × 25 × 4", "2026-05-20", "2026-06-30", "2026-10-01", "2026-11-30"),
                row("Pan, trap and drain", "2026-04-01", "2026-05-31", null, null),
                row("Humidifier", "2026-05-01", "2026-06-29", "2026-09-01", "2026-10-31"),
                row("Exchanger core", "2026-04-01", "2026-06-10", "2026-09-10", "2026-11-30"),
                new HomeYear.Row(
                        "Exchanger airflow balance",
                        List.of(new HomeYear.Promise(
                                "balance", LocalDate.of(2026, 4, 10), LocalDate.of(2026, 5, 10), null))));
        return new HomeYear(
                LocalDate.of(2026, 4, 1),
                LocalDate.of(2026, 5, 27),
                List.of(
                        new Turn(
                                Changeover.COOLING, Window.ofDays(LocalDate.of(2026, 4, 1), LocalDate.of(2026, 6, 15))),
                        new Turn(
                                Changeover.HEATING,
                                Window.ofDays(LocalDate.of(2026, 9, 1), LocalDate.of(2026, 11, 15)))),
                rows,
                List.of(
                        new HomeYear.Visit("spring", DAY, HomeYear.Standing.CLOSED),
                        new HomeYear.Visit("fall", LocalDate.of(2026, 10, 15), HomeYear.Standing.PENCILLED)),
                List.of(new HomeYear.HouseholdTask(
                        "Look at the filter",
                        List.of(
                                new HomeYear.Mark(LocalDate.of(2026, 4, 10), HomeYear.Done.DONE),
                                new HomeYear.Mark(LocalDate.of(2026, 5, 10), HomeYear.Done.NOT_DONE),
                                new HomeYear.Mark(LocalDate.of(2026, 6, 10), HomeYear.Done.TO_COME),
                                new HomeYear.Mark(LocalDate.of(2026, 7, 10), HomeYear.Done.TO_COME)))));
    }

    private static HomeYear.Row row(
            String name, String first, String last, @Nullable String second, @Nullable String secondLast) {
        List<HomeYear.Promise> promises = new ArrayList<>();
        promises.add(new HomeYear.Promise("spring", LocalDate.parse(first), LocalDate.parse(last), "spring"));
        if (second != null && secondLast != null) {
            promises.add(new HomeYear.Promise("fall", LocalDate.parse(second), LocalDate.parse(secondLast), "fall"));
        }
        return new HomeYear.Row(name, promises);
    }
}
