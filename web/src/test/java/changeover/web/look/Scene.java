package changeover.web.look;

import changeover.billing.documents.band.HomeYear;
import changeover.billing.documents.band.HomeYear.Done;
import changeover.billing.documents.band.HomeYear.HouseholdTask;
import changeover.billing.documents.band.HomeYear.Mark;
import changeover.billing.documents.band.HomeYear.Promise;
import changeover.billing.documents.band.HomeYear.Row;
import changeover.billing.documents.band.HomeYear.Standing;
import changeover.billing.documents.band.HomeYear.Visit;
import changeover.billing.documents.band.Turn;
import changeover.contracts.calendar.Changeover;
import changeover.contracts.calendar.Season;
import changeover.web.session.Frame;
import changeover.web.session.Tab;
import changeover.web.session.WeeksChart.Week;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** An invented shop on an invented day. */
final class Scene {

    static final LocalDate TODAY = LocalDate.of(2026, 10, 7);

    private static final List<Season> SEASONS = List.of(
            new Season(
                    "cooling",
                    "To cooling",
                    "À la climatisation",
                    MonthDay.of(4, 1),
                    MonthDay.of(6, 15),
                    Changeover.COOLING),
            new Season(
                    "heating",
                    "To heating",
                    "Au chauffage",
                    MonthDay.of(9, 1),
                    MonthDay.of(11, 15),
                    Changeover.HEATING));

    private Scene() {}

    static Frame frame(String language, String theme, @Nullable Tab open) {
        boolean french = language.startsWith("fr");
        return new Frame(
                french ? "Atelier Beaudry-Lanoue" : "Marlow & Quince",
                french ? "Chauffage et climatisation, Saint-Rémi-du-Lac" : "Heating and cooling, Fallow Bay",
                french ? "beaudry" : "marlow",
                french ? "Noémie Vachon" : "Tamsin Ogilvie",
                "owner",
                language,
                open,
                TODAY,
                theme,
                Turn.of(SEASONS, LocalDate.of(2026, 1, 1), LocalDate.of(2026, 12, 31)),
                theme.equals("night"),
                theme.equals("night") ? (french ? "La maison est ajoutée." : "The home is added.") : null,
                "/marlow/today");
    }

    static HomeYear year(boolean french) {
        LocalDate begins = LocalDate.of(2026, 4, 1);
        return new HomeYear(
                begins,
                TODAY,
                Turn.of(SEASONS, begins, begins.plusYears(1).minusDays(1)),
                List.of(
                        row(french ? "Thermopompe" : "Outdoor heat pump", spring(4, 12, 6, 15), fall(9, 1, 11, 15)),
                        row(
                                french ? "Serpentin et ventilo-convecteur" : "Indoor coil, air handler",
                                spring(4, 1, 6, 15),
                                fall(9, 1, 11, 15),
                                promise("amps", 9, 10, 10, 31, "fall")),
                        row(
                                french ? "Filtre 20 × 20 × 4" : "Filter slot, 20 × 20 × 4",
                                spring(5, 20, 7, 1),
                                fall(10, 1, 11, 30)),
                        row(french ? "Bac, siphon et drain" : "Pan, trap and drain", spring(4, 1, 5, 31)),
                        row(french ? "Humidificateur" : "Humidifier", spring(5, 1, 6, 30), fall(9, 1, 10, 31)),
                        row(
                                french ? "Échangeur d’air" : "Exchanger core",
                                spring(4, 1, 6, 10),
                                promise("core", 9, 10, 11, 30, "late")),
                        row(
                                french ? "Équilibre de l’échangeur" : "Exchanger air balance",
                                promise("balance", 7, 15, 9, 30, "fall")),
                        row(
                                french ? "Chauffe-eau" : "Water heater",
                                new Promise("anode", day(12, 1), LocalDate.of(2027, 4, 30), null))),
                List.of(
                        new Visit("spring", day(5, 27), Standing.CLOSED),
                        new Visit("fall", day(10, 15), Standing.PENCILLED),
                        new Visit("late", day(10, 23), Standing.MOVING)),
                List.of(
                        marks(french ? "Vérifier le filtre" : "Check the filter", 10, 5, 4),
                        marks(french ? "Laver les filtres de l’échangeur" : "Wash the exchanger filters", 20, 3, -1),
                        marks(french ? "Dégager les hottes" : "Clear the outdoor hoods", 3, 6, 3)));
    }

    static List<Week> weeks() {
        int[][] hours = {
            {90, 62, 0, 0},
            {72, 70, 0, 0},
            {90, 84, 0, 0},
            {90, 88, 0, 0},
            {90, 90, 0, 0},
            {90, 38, 46, 2},
            {72, 0, 66, 15},
            {90, 0, 58, 39},
            {90, 0, 22, 52},
            {90, 0, 9, 42},
            {90, 0, 4, 29}
        };
        List<Week> weeks = new ArrayList<>();
        LocalDate monday = LocalDate.of(2026, 8, 31);
        for (int[] week : hours) {
            weeks.add(new Week(monday, week[0] * 60, week[1] * 60, week[2] * 60, week[3] * 60));
            monday = monday.plusWeeks(1);
        }
        return weeks;
    }

    private static HouseholdTask marks(String name, int dayOfMonth, int done, int missed) {
        List<Mark> marks = new ArrayList<>();
        for (int month = 0; month < 12; month++) {
            LocalDate day = LocalDate.of(2026, 4, dayOfMonth).plusMonths(month);
            Done mark = day.isAfter(TODAY) ? Done.TO_COME : month == missed ? Done.NOT_DONE : Done.DONE;
            marks.add(new Mark(day, mark));
        }
        return new HouseholdTask(name, marks);
    }

    private static Row row(String name, Promise... promises) {
        return new Row(name, List.of(promises));
    }

    private static Promise spring(int month, int day, int lastMonth, int lastDay) {
        return promise("to cooling", month, day, lastMonth, lastDay, "spring");
    }

    private static Promise fall(int month, int day, int lastMonth, int lastDay) {
        return promise("to heating", month, day, lastMonth, lastDay, "fall");
    }

    private static Promise promise(String what, int month, int day, int lastMonth, int lastDay, String visit) {
        return new Promise(what, day(month, day), day(lastMonth, lastDay), visit);
    }

    private static LocalDate day(int month, int day) {
        return LocalDate.of(2026, month, day);
    }
}
