package changeover.scheduling.closeout;

import static changeover.scheduling.closeout.Job.FILTER;
import static changeover.scheduling.closeout.Job.say;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refused;
import changeover.scheduling.Shop;
import changeover.scheduling.closeout.Job.At;
import changeover.scheduling.closeout.Operation.Arrive;
import changeover.scheduling.closeout.Operation.Close;
import changeover.scheduling.closeout.Operation.Found;
import changeover.scheduling.closeout.Operation.Leave;
import changeover.scheduling.closeout.Operation.Measured;
import changeover.scheduling.closeout.Operation.MinutesTold;
import changeover.scheduling.closeout.Operation.PartTaken;
import changeover.scheduling.closeout.Operation.Received;
import changeover.scheduling.closeout.Operation.TaskAnswered;
import changeover.scheduling.stock.Stock;
import changeover.scheduling.visits.VisitEnd;
import changeover.scheduling.visits.Visits;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class CloseOutTest {

    @Inject
    Job job;

    @Inject
    Shop shop;

    @Inject
    CloseOut closeOut;

    @Inject
    Closures closures;

    @Inject
    Visits visits;

    @Inject
    Stock stock;

    @Inject
    Told told;

    @Inject
    EntityManager rows;

    /** Everything a good technician says, in order. */
    static List<SentOperation> whole(At at) {
        return List.of(
                say(1, new Arrive()),
                say(2, new Measured(at.amps(), "volts", "225", null, null, null)),
                say(3, new Measured(at.amps(), "amps", "19,5", "A", "full", null)),
                say(4, new TaskAnswered(at.amps(), Outcome.DONE, null)),
                say(5, new PartTaken(FILTER, BigDecimal.ONE, null, at.furnace(), "plan", null)),
                say(6, new TaskAnswered(at.filter(), Outcome.DONE, null)),
                say(
                        7,
                        new Found(
                                "recommended",
                                null,
                                "The slot is bent.",
                                "en",
                                at.furnace(),
                                null,
                                "Mara Quill",
                                true,
                                "estimate",
                                null)),
                say(8, new TaskAnswered(at.drain(), Outcome.DEFERRED, "The drain is behind boxes.")),
                say(9, new MinutesTold(55, 10, "moved boxes")),
                say(10, new Received("Mara Quill", null)),
                say(11, new Leave()),
                say(12, new Close(null)));
    }

    private List<OperationAnswer> apply(At at, List<SentOperation> sent) {
        return shop.in(at.tenant(), () -> closeOut.apply(at.visit(), sent, Shop.TECHNICIAN));
    }

    @Test
    void a_closed_visit_moves_stock_writes_history_opens_what_follows_and_is_told_once() {
        At at = job.open();
        shop.in(at.tenant(), () -> {
            job.appoint(at, LocalDate.of(2026, 10, 14));
            return true;
        });
        List<SentOperation> sent = whole(at);
        List<OperationAnswer> answers = apply(at, sent);
        assertEquals(
                List.of(),
                answers.stream().flatMap(answer -> answer.refusals().stream()).toList());
        assertEquals(answers, apply(at, sent), "sent again, the same answers");

        shop.in(at.tenant(), () -> {
            Closure closure = closures.of(at.visit()).orElseThrow();
            assertEquals(55, closure.minutes());
            assertEquals(10, closure.extraMinutes());
            assertEquals("Mara Quill", closure.receivedBy().orElseThrow());
            assertEquals(
                    VisitEnd.CLOSED, visits.ending(at.visit()).orElseThrow().how());
            assertEquals(new BigDecimal("9"), stock.onHand(at.van(), FILTER));
            assertEquals(1, stock.ofVisit(at.visit()).size());
            assertEquals(2, count("unit_history", at));
            assertEquals(2, count("follow_up", at));
            Object[] amps = (Object[]) rows.createNativeQuery(
                            "select standing, round(low, 3), round(high, 3), unit from reading where code = 'amps'")
                    .getSingleResult();
            assertEquals("within", amps[0], "225 V on a 240 V, 5 kW element is 19.53 A");
            assertEquals(new BigDecimal("17.578"), amps[1]);
            assertEquals(new BigDecimal("21.484"), amps[2]);
            return true;
        });
        List<VisitClosed> heard = told.closed(at.visit());
        assertEquals(1, heard.size());
        assertEquals(
                List.of(FILTER),
                heard.getFirst().partsUsed().stream()
                        .map(VisitClosed.Part::partCode)
                        .toList());
        assertEquals(1, heard.getFirst().findings().size());
    }

    @Test
    void two_who_close_at_once_close_it_once() throws Exception {
        At at = job.open();
        List<SentOperation> sent = whole(at);
        try (var threads = Executors.newFixedThreadPool(4)) {
            var answers = threads.invokeAll(IntStream.range(0, 8)
                    .mapToObj(_ -> (java.util.concurrent.Callable<List<OperationAnswer>>) () -> apply(at, sent))
                    .toList());
            for (var answer : answers) {
                assertEquals(answers.getFirst().get(), answer.get());
            }
        }
        assertEquals(1, told.closed(at.visit()).size());
        shop.in(at.tenant(), () -> {
            assertEquals(new BigDecimal("9"), stock.onHand(at.van(), FILTER));
            assertEquals(1, count("closure", at));
            return true;
        });
    }

    @Test
    void it_does_not_close_before_every_task_has_its_outcome_and_somebody_received_it() {
        At at = job.open();
        List<OperationAnswer> answers = apply(at, List.of(say(1, new Close(null))));
        assertEquals(
                List.of(
                        "closeout.task-open",
                        "closeout.task-open",
                        "closeout.task-open",
                        "closeout.received-by",
                        "closeout.minutes"),
                answers.getFirst().refusals().stream().map(Refusal::code).toList());
        Refused refused = assertThrows(
                Refused.class,
                () -> shop.in(
                        at.tenant(),
                        () -> closeOut.applyWhole(
                                at.visit(), List.of(say(1, new Arrive()), say(2, new Close(null))), Shop.TECHNICIAN)));
        assertTrue(String.valueOf(refused.first().field()).startsWith("operations[1].task."));
    }

    @Test
    void what_comes_after_closing_is_refused_and_kept() {
        At at = job.open();
        apply(at, whole(at));
        SentOperation late = say(20, new MinutesTold(90, 0, null));
        assertEquals(
                "closeout.closed-already",
                apply(at, List.of(late)).getFirst().refusals().getFirst().code());
        shop.in(at.tenant(), () -> {
            assertEquals(55, closures.of(at.visit()).orElseThrow().minutes());
            return true;
        });
        assertEquals(1, told.closed(at.visit()).size());
    }

    private long count(String table, At at) {
        return ((Number) rows.createNativeQuery("select count(*) from " + table + " where visit_id = :visit")
                        .setParameter("visit", at.visit())
                        .getSingleResult())
                .longValue();
    }
}
