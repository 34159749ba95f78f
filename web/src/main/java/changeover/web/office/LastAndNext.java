package changeover.web.office;

import changeover.billing.documents.band.DayWords;
import changeover.scheduling.visits.YearOfHome;
import changeover.scheduling.visits.YearOfHome.Standing;
import changeover.web.session.MachineInWords;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.UUID;

/** When a machine was last worked on in this year, and by when it is next: the two days that a tag never leaves out. */
record LastAndNext(YearOfHome year, Locale locale) {

    List<MachineInWords.Said> of(UUID machine) {
        boolean french = locale.getLanguage().equals("fr");
        DayWords days = DayWords.of(locale);
        var said = new ArrayList<MachineInWords.Said>();
        year.visits().stream()
                .filter(going -> going.standing() == Standing.CLOSED)
                .filter(going -> going.tasks().stream().anyMatch(line -> machine.equals(line.equipmentId())))
                .map(YearOfHome.Going::day)
                .filter(Objects::nonNull)
                .max(Comparator.<LocalDate>naturalOrder())
                .ifPresent(day -> said.add(
                        new MachineInWords.Said(french ? "Dernier passage" : "Last visit", days.briefWithYear(day))));
        year.promises().stream()
                .filter(promise -> machine.equals(promise.equipmentId()))
                .filter(promise -> promise.standing() != Standing.CLOSED)
                .map(promise -> promise.window().last())
                .min(Comparator.naturalOrder())
                .ifPresent(day -> said.add(new MachineInWords.Said(
                        french ? "À faire" : "Due", (french ? "d’ici le " : "by ") + days.briefWithYear(day))));
        return said;
    }
}
