package changeover.web.field;

import changeover.contracts.catalogue.ReadingSpec;
import changeover.contracts.tenants.CurrentTenant;
import changeover.scheduling.closeout.DaySheet;
import changeover.scheduling.closeout.StopLines;
import changeover.scheduling.instruments.Instrument;
import changeover.scheduling.instruments.Instruments;
import changeover.web.session.Bundles;
import changeover.web.session.Frame;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;

/** What a technician may have measured with: their own instruments first, each that is over said so. */
@ApplicationScoped
class InstrumentChoices {

    /** An instrument to choose. */
    public record Choice(String id, String words) {}

    @Inject
    Instruments instruments;

    @Inject
    CurrentTenant current;

    /** None for a task that asks for no number. */
    List<Choice> of(DaySheet.TaskLine task, Frame frame) {
        boolean measures = task.readings().stream().anyMatch(InstrumentChoices::isNumber);
        return measures
                ? instruments.all().stream()
                        .sorted(Comparator.comparing(one -> !current.person().equals(one.holder())))
                        .map(one -> new Choice(one.id().toString(), words(one, frame.today(), frame)))
                        .toList()
                : List.of();
    }

    static boolean isNumber(DaySheet.ReadingLine line) {
        return line.spec().form() == ReadingSpec.Form.NUMBER;
    }

    /** The instruments of the visit's readings that are over on the day, each once. */
    List<String> over(StopLines.Lines lines, LocalDate day, Frame frame) {
        List<String> used = lines.said().stream()
                .filter(said -> said.kind().equals("reading"))
                .map(said -> SheetSoFar.text(said, "instrument"))
                .distinct()
                .toList();
        return instruments.all().stream()
                .filter(one -> used.contains(one.id().toString()) && one.isOver(day))
                .map(one -> words(one, day, frame))
                .toList();
    }

    private static String words(Instrument one, LocalDate day, Frame frame) {
        String name = one.name() + ", " + one.serial();
        FieldWords say = Bundles.of(FieldWords.class, frame.locale());
        LocalDate until = one.calibratedUntil();
        return until == null
                ? say.instrument_never(name)
                : one.isOver(day) ? say.instrument_over(name, frame.brief(until)) : name;
    }
}
