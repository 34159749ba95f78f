package changeover.deploy.demo;

import changeover.contracts.catalogue.Band;
import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.FindingLevel;
import changeover.contracts.catalogue.ReadingSpec;
import changeover.contracts.catalogue.Sentence;
import changeover.contracts.catalogue.Task;
import changeover.contracts.tenants.Businesses;
import changeover.scheduling.closeout.CloseOut;
import changeover.scheduling.closeout.Operation;
import changeover.scheduling.closeout.Outcome;
import changeover.scheduling.closeout.SentOperation;
import changeover.scheduling.visits.VisitTask;
import changeover.scheduling.visits.Visits;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** A visit closed as a technician would: tasks, readings within their bands, now and then a finding or a part. */
@ApplicationScoped
public class DemoCloseOut {

    private static final String DEVICE = "tablet-2";

    @Inject
    CloseOut closeOut;

    @Inject
    Visits visits;

    @Inject
    Businesses businesses;

    @Inject
    Clock clock;

    void close(UUID visit, DemoShop.Hand hand, LocalTime starts, int minutes) {
        int luck = Math.floorMod(visit.hashCode(), 100);
        var said = new ArrayList<Operation>();
        said.add(new Operation.Arrive());
        for (VisitTask task : visits.tasksOf(visit)) {
            said.add(new Operation.TaskAnswered(task.id(), Outcome.DONE, null));
            Catalogue.shipped().findTask(task.taskCode()).ifPresent(known -> readings(task, known, luck, said));
        }
        if (luck < 22) {
            finding(visits.tasksOf(visit), luck, said);
        }
        if (luck % 4 == 0) {
            said.add(new Operation.PartTaken("FIL-16254", BigDecimal.ONE, null, null, "plan", null));
        }
        if (luck % 11 == 0) {
            said.add(new Operation.PartTaken("FLO-3", BigDecimal.ONE, null, null, "extra", null));
        }
        boolean french = businesses.current().language().equals("fr");
        int extra = luck % 11 == 0 ? 25 : 0;
        said.add(new Operation.MinutesTold(
                Math.min(minutes + extra, 480),
                extra,
                extra == 0 ? null : french ? "Interrupteur posé au bac" : "Float switch fitted at the pan"));
        said.add(
                luck % 9 == 0
                        ? new Operation.Received(
                                null, french ? "Absent, clé chez le voisin" : "Out, key with the neighbour")
                        : new Operation.Received(french ? "La personne de la maison" : "The household", null));
        send(visit, hand, starts, said);
    }

    /** A repair that somebody called for: nothing was promised, and every minute is charged. */
    void closeCall(UUID visit, DemoShop.Hand hand, LocalTime starts, int minutes) {
        closeCall(visit, hand, starts, minutes, List.of());
    }

    /** @param found what was found there */
    void closeCall(UUID visit, DemoShop.Hand hand, LocalTime starts, int minutes, List<Operation.Found> found) {
        boolean french = businesses.current().language().equals("fr");
        var said = new ArrayList<Operation>();
        said.add(new Operation.Arrive());
        said.addAll(found);
        said.add(new Operation.MinutesTold(minutes, 0, null));
        said.add(new Operation.Received(french ? "La personne de la maison" : "The household", null));
        send(visit, hand, starts, said);
    }

    private void send(UUID visit, DemoShop.Hand hand, LocalTime starts, List<Operation> said) {
        var day = clock.instant().atZone(businesses.current().zone()).toLocalDate();
        Instant at = day.atTime(starts).atZone(businesses.current().zone()).toInstant();
        said.add(new Operation.Leave());
        said.add(new Operation.Close(null));
        var sent = new ArrayList<SentOperation>();
        for (Operation operation : said) {
            sent.add(SentOperation.of(
                    UUID.randomUUID(), DEVICE, sent.size() + 1L, at.plusSeconds(60L * sent.size()), operation));
        }
        closeOut.applyWhole(visit, sent, hand.person());
    }

    /** Readings with figures of the trade are taken near the middle of their band, a few a little outside. */
    private static void readings(VisitTask task, Task known, int luck, List<Operation> said) {
        for (ReadingSpec spec : known.readings()) {
            value(spec, luck)
                    .ifPresent(
                            value -> said.add(new Operation.Measured(task.id(), spec.code(), value, null, null, null)));
        }
    }

    private static Optional<String> value(ReadingSpec spec, int luck) {
        if (spec.form() == ReadingSpec.Form.YES_NO) {
            return Optional.of(spec.band() instanceof Band.Answer answer && !answer.yes() ? "no" : "yes");
        }
        if (spec.form() != ReadingSpec.Form.NUMBER || !(spec.band() instanceof Band.Fixed band)) {
            return Optional.empty();
        }
        BigDecimal low = band.low() == null ? BigDecimal.ZERO : band.low();
        BigDecimal high =
                band.high() == null ? low.multiply(new BigDecimal("1.4")).add(BigDecimal.ONE) : band.high();
        BigDecimal share = BigDecimal.valueOf(luck == 7 ? 115 : 25 + luck % 50, 2);
        return Optional.of(low.add(high.subtract(low).multiply(share))
                .setScale(2, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString());
    }

    private static void finding(List<VisitTask> tasks, int luck, List<Operation> said) {
        FindingLevel level =
                luck < 3 ? FindingLevel.URGENT : luck < 12 ? FindingLevel.RECOMMENDED : FindingLevel.INFORMATION;
        for (VisitTask task : tasks) {
            Optional<Sentence> sentence = Catalogue.shipped()
                    .findTask(task.taskCode())
                    .flatMap(known -> known.kinds().stream().findFirst())
                    .flatMap(kind -> Catalogue.shipped().sentencesFor(kind).stream()
                            .filter(one -> one.level() == level)
                            .findFirst());
            if (sentence.isPresent()) {
                said.add(new Operation.Found(
                        level.code(),
                        sentence.get().code(),
                        null,
                        null,
                        task.equipmentId().orElse(null),
                        task.id(),
                        null,
                        null,
                        level == FindingLevel.URGENT ? "visit" : null,
                        null));
                return;
            }
        }
    }
}
