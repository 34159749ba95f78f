package changeover.scheduling.closeout;

import static changeover.scheduling.closeout.Job.FILTER;
import static changeover.scheduling.closeout.Job.say;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import changeover.contracts.PostgresForTests;
import changeover.contracts.words.Refused;
import changeover.scheduling.Shop;
import changeover.scheduling.closeout.Job.At;
import changeover.scheduling.closeout.Operation.Close;
import changeover.scheduling.closeout.Operation.MinutesTold;
import changeover.scheduling.closeout.Operation.PartTaken;
import changeover.scheduling.closeout.Operation.TaskAnswered;
import changeover.scheduling.stock.Stock;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class AmendmentTest {

    @Inject
    Job job;

    @Inject
    Shop shop;

    @Inject
    CloseOut closeOut;

    @Inject
    Amendments amendments;

    @Inject
    Closures closures;

    @Inject
    Stock stock;

    @Inject
    Told told;

    @Inject
    EntityManager rows;

    /** Everything a good technician says, in order. */
    @Test
    void an_amendment_changes_stock_history_and_what_follows() {
        At at = job.open();
        List<SentOperation> sent = CloseOutTest.whole(at);
        apply(at, sent);
        UUID amendment = UUID.randomUUID();
        List<SentOperation> corrections = List.of(
                say(1, new Operation.TakeBack(sent.get(4).id())),
                say(2, new PartTaken(Job.PAD, BigDecimal.ONE, null, at.furnace(), "extra", null)),
                say(3, new TaskAnswered(at.drain(), Outcome.DONE, null)),
                say(4, new TaskAnswered(at.filter(), Outcome.NOT_APPLICABLE, "washable")));
        int version = amend(at, amendment, corrections);
        assertEquals(2, version);
        assertEquals(2, amend(at, amendment, corrections), "the same amendment again");
        shop.in(at.tenant(), () -> {
            assertEquals(Map.of(FILTER, new BigDecimal("1E+1"), Job.PAD, BigDecimal.ONE), stock.onHand(at.van()));
            assertEquals(
                    List.of("test-amps", "test-drain"),
                    rows.createNativeQuery("select task_code from unit_history order by 1", String.class)
                            .getResultList());
            assertEquals(
                    List.of("estimate"),
                    rows.createNativeQuery("select kind from follow_up where ended_on is null", String.class)
                            .getResultList());
            assertEquals(1, closures.amendmentsOf(at.visit()).size());
            assertEquals(2, closures.of(at.visit()).orElseThrow().version());
            return true;
        });
        VisitAmended heard = told.amended(at.visit());
        assertEquals(
                List.of(FILTER),
                heard.before().partsUsed().stream()
                        .map(VisitClosed.Part::partCode)
                        .toList());
        assertEquals(
                List.of(Job.PAD),
                heard.now().partsUsed().stream().map(VisitClosed.Part::partCode).toList());
    }

    @Test
    void a_wrong_amendment_changes_nothing() {
        At at = job.open();
        apply(at, CloseOutTest.whole(at));
        List<List<SentOperation>> wrong = List.of(
                List.of(),
                List.of(say(1, new MinutesTold(50, 0, null)), say(2, new TaskAnswered(at.home(), Outcome.DONE, null))),
                List.of(say(1, new Close(null))),
                List.of(say(1, new PartTaken(FILTER, new BigDecimal(500), null, null, "plan", null))));
        for (List<SentOperation> corrections : wrong) {
            assertThrows(Refused.class, () -> amend(at, UUID.randomUUID(), corrections));
        }
        shop.in(at.tenant(), () -> {
            assertEquals(1, closures.of(at.visit()).orElseThrow().version());
            assertEquals(55, closures.of(at.visit()).orElseThrow().minutes());
            assertEquals(new BigDecimal("9"), stock.onHand(at.van(), FILTER));
            assertEquals(0, closures.amendmentsOf(at.visit()).size());
            return true;
        });
    }

    private int amend(At at, UUID amendment, List<SentOperation> corrections) {
        return shop.in(
                at.tenant(),
                () -> amendments.amend(amendment, at.visit(), "typed wrong", corrections, Shop.TECHNICIAN));
    }

    private List<OperationAnswer> apply(At at, List<SentOperation> sent) {
        return shop.in(at.tenant(), () -> closeOut.apply(at.visit(), sent, Shop.TECHNICIAN));
    }
}
