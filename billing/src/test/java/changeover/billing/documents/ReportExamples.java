package changeover.billing.documents;

import changeover.billing.documents.ReportSheet.ByYou;
import changeover.billing.documents.ReportSheet.Done;
import changeover.billing.documents.ReportSheet.Finding;
import changeover.billing.documents.ReportSheet.NotDone;
import changeover.billing.documents.ReportSheet.Part;
import changeover.billing.documents.ReportSheet.Reading;
import changeover.billing.documents.ReportSheet.Received;
import changeover.billing.documents.ReportSheet.Standing;
import changeover.contracts.catalogue.FindingLevel;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Invented visits and what was seen at them. */
final class ReportExamples {

    private static final LocalDate DAY = LocalDate.of(2026, 5, 27);

    private ReportExamples() {}

    static ReportSheet english() {
        return sheet(
                Locale.CANADA,
                PaperExamples.TILLERY,
                List.of(
                        reading(
                                "Indoor coil, air handler",
                                "Air across the coil, drop",
                                "18",
                                "°F",
                                "16",
                                "22",
                                Standing.GOOD,
                                null),
                        reading(
                                "Indoor coil, air handler",
                                "Static, whole system",
                                "0.61",
                                "in.w.c.",
                                null,
                                "0.50",
                                Standing.HIGH,
                                1),
                        reading(
                                "Outdoor heat pump",
                                "Compressor, at full speed",
                                "14.2",
                                "A",
                                null,
                                "16.7",
                                Standing.GOOD,
                                null),
                        new Reading(
                                "Pan, trap and drain",
                                "Ran freely",
                                null,
                                "yes",
                                null,
                                null,
                                null,
                                null,
                                Standing.GOOD,
                                null),
                        reading("Exchanger", "Supply against exhaust", "8", "%", null, "10", Standing.GOOD, null)),
                List.of(
                        new Finding(
                                FindingLevel.DO_NOT_USE,
                                "Electric furnace",
                                "The lug of bank 2 is burnt. The bank is switched off and locked.",
                                "An electrician opens it. It stays off until a licensed person writes it back in service.",
                                "Adèle Fournier-Blake was told at 10:05 and agreed.",
                                List.of(photo(400, 300), photo(300, 400))),
                        new Finding(
                                FindingLevel.URGENT,
                                "Indoor coil, air handler",
                                "Static is above the plate. The filter was new, so the return is too small or blocked.",
                                "We come back 3 June, 40 minutes, no charge to look. Until then keep every return open.",
                                null,
                                List.of()),
                        new Finding(
                                FindingLevel.RECOMMENDED,
                                "Pan, trap and drain",
                                "Light rust on the pan. Dry under it.",
                                "We look again in the fall.",
                                null,
                                List.of(photo(320, 240))),
                        new Finding(
                                FindingLevel.INFORMATION,
                                null,
                                "The CO alarm is good until 2031.",
                                null,
                                null,
                                List.of())),
                true);
    }

    static ReportSheet without() {
        return sheet(Locale.CANADA_FRENCH, PaperExamples.MONTREUIL, List.of(), List.of(), false);
    }

    static ReportSheet ofMany(int findings) {
        List<Finding> many = new ArrayList<>();
        List<Reading> readings = new ArrayList<>();
        for (int number = 0; number < findings; number++) {
            many.add(new Finding(
                    FindingLevel.values()[number % 4],
                    "Machine number " + number % 9 + " with a name that is rather long, in the second crawlspace",
                    "A long story of what was seen. ".repeat(1 + number % 5),
                    "What happens next.",
                    null,
                    number % 6 == 0
                            ? List.of(
                                    photo(640, 480), photo(480, 640),
                                    photo(200, 200), photo(900, 100),
                                    photo(100, 900), photo(300, 200))
                            : List.of()));
            readings.add(reading(
                    "Machine number " + number / 4
                            + " with a name that is rather long, in the second crawlspace behind the stairs",
                    "A reading with a rather long name, measured at the second port, number " + number,
                    String.valueOf(number * 1000 + 0.125),
                    "L/s",
                    "10",
                    number % 2 == 0 ? "20000.5" : null,
                    Standing.values()[number % 4],
                    number % 3 == 0 ? number + 1 : null));
        }
        return sheet(Locale.CANADA_FRENCH, PaperExamples.MONTREUIL, readings, many, true);
    }

    private static ReportSheet sheet(
            Locale language, Letterhead from, List<Reading> readings, List<Finding> findings, boolean much) {
        return new ReportSheet(
                language,
                from,
                List.of("14 Larch Street", "Port Ambrose, Ontario  K0X 0X0"),
                "Adèle Fournier-Blake",
                DAY,
                LocalTime.of(8, 4),
                LocalTime.of(10, 21),
                "Mateo Ruiz",
                "refrigerant, electrical",
                "the turn to cooling",
                much
                        ? new ReportSheet.Correction(
                                2, LocalDate.of(2026, 6, 2), "Mateo Ruiz", "the static was typed 0.16 and is 0.61.")
                        : null,
                readings,
                findings,
                much
                        ? List.of(
                                new Done("Outdoor heat pump", List.of("Coil washed", "clear of brush", "amps read")),
                                new Done(
                                        "Indoor coil, air handler",
                                        List.of("Coil dusted, no oil", "filter 16 × 25 × 4 changed, arrow right")),
                                new Done(
                                        "Pan, trap and drain",
                                        List.of(
                                                "Pan cleaned, trap flushed",
                                                "proven with water, a little first and 2 L last")),
                                new Done(
                                        "Exchanger",
                                        List.of("Core washed, back with its arrow up", "both latches closed")))
                        : List.of(),
                much
                        ? List.of(new NotDone(
                                "Humidifier", "Water off, damper to summer", "The valve is behind boxes; next visit."))
                        : List.of(),
                much
                        ? List.of(new Part("1", "Filter 16 × 25 × 4, MERV 11"), new Part("0.5", "L drain tablets"))
                        : List.of(),
                much
                        ? List.of(
                                new ByYou(LocalDate.of(2026, 6, 10), "Look at the filter", "Filter slot"),
                                new ByYou(LocalDate.of(2026, 6, 30), "Keep 60 cm clear around the outdoor unit", null),
                                new ByYou(LocalDate.of(2026, 8, 20), "Wash the exchanger filters", "Exchanger"))
                        : List.of(),
                much ? "15 October 2026, 8:00" : null,
                null,
                much
                        ? new Received("A. Fournier-Blake", null, LocalTime.of(10, 20))
                        : new Received(null, "La clé est sous le pot.", null),
                much ? ReportYears.year() : null,
                much ? List.of("electrical", "co") : List.of());
    }

    private static Reading reading(
            String machine,
            String what,
            String value,
            String unit,
            @Nullable String low,
            @Nullable String high,
            Standing standing,
            @Nullable Integer finding) {
        return new Reading(
                machine,
                what,
                null,
                value + "\u00a0" + unit,
                new BigDecimal(value),
                unit,
                low == null ? null : new BigDecimal(low),
                high == null ? null : new BigDecimal(high),
                standing,
                finding);
    }

    private static ReportSheet.Photo photo(int width, int height) {
        return new ReportSheet.Photo(PaperExamples.photo(width, height), null);
    }
}
