package changeover.scheduling.closeout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.PostgresForTests;
import changeover.scheduling.Shop;
import changeover.scheduling.closeout.Job.At;
import changeover.scheduling.closeout.Operation.Arrive;
import changeover.scheduling.closeout.Operation.Close;
import changeover.scheduling.closeout.Operation.Found;
import changeover.scheduling.closeout.Operation.HouseholdNote;
import changeover.scheduling.closeout.Operation.Leave;
import changeover.scheduling.closeout.Operation.Measured;
import changeover.scheduling.closeout.Operation.MinutesTold;
import changeover.scheduling.closeout.Operation.PartTaken;
import changeover.scheduling.closeout.Operation.Photographed;
import changeover.scheduling.closeout.Operation.Received;
import changeover.scheduling.closeout.Operation.TakeBack;
import changeover.scheduling.closeout.Operation.TaskAnswered;
import changeover.scheduling.stock.KnownPart.Amount;
import changeover.scheduling.stock.Stock;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class HistoriesTest {

    private static final int TRIALS = Boolean.getBoolean("changeover.deep") ? 1000 : 60;
    private static final long SEED = 20261125;

    @Inject
    Job job;

    @Inject
    Shop shop;

    @Inject
    CloseOut closeOut;

    @Inject
    Stock stock;

    @Inject
    Told told;

    @Inject
    EntityManager rows;

    @Test
    void doubled_reordered_and_split_histories_end_as_the_one_in_order() {
        At first = job.open();
        shop.in(first.tenant(), () -> {
            stock.receive(
                    UUID.randomUUID(),
                    first.van(),
                    List.of(new Amount(Job.FILTER, new BigDecimal(90000)), new Amount(Job.PAD, new BigDecimal(90000))),
                    null);
            return true;
        });
        for (int trial = 0; trial < TRIALS; trial++) {
            long seed = SEED + trial;
            At inOrder = visit(first);
            At scrambled = visit(first);
            post(inOrder, chained(inOrder, seed));
            List<SentOperation> history = chained(scrambled, seed);
            Random random = new Random(seed * 31);
            for (List<SentOperation> batch : scrambled(history, random)) {
                post(scrambled, batch);
            }
            assertEquals(state(inOrder), state(scrambled), "seed " + seed);
            assertEquals(1, told.closed(scrambled.visit()).size(), "told once, seed " + seed);
        }
    }

    private At visit(At first) {
        return shop.in(first.tenant(), () -> job.visit(first.tenant(), first.home(), first.furnace(), first.van()));
    }

    private void post(At at, List<SentOperation> sent) {
        shop.in(at.tenant(), () -> closeOut.apply(at.visit(), sent, Shop.TECHNICIAN));
    }

    /** A whole close-out with second thoughts; the same for the same seed but for the ids; a clock that is off by years. */
    private static List<SentOperation> chained(At at, long seed) {
        Random random = new Random(seed);
        Duration off = Duration.ofDays(random.nextInt(-4000, 4000));
        List<Operation> said = new ArrayList<>();
        List<Integer> additive = new ArrayList<>();
        List<UUID> ids = new ArrayList<>();
        said.add(new Arrive());
        ids.add(UUID.randomUUID());
        int length = random.nextInt(8, 30);
        for (int i = 1; i < length; i++) {
            UUID id = UUID.randomUUID();
            Operation operation = any(at, random, additive, ids);
            if (operation instanceof Found || operation instanceof PartTaken) {
                additive.add(i);
            }
            said.add(operation);
            ids.add(id);
        }
        for (UUID task : List.of(at.amps(), at.filter(), at.drain())) {
            said.add(new TaskAnswered(task, any(Outcome.values(), random), "because " + random.nextInt(9)));
        }
        said.add(new MinutesTold(random.nextInt(10, 200), random.nextInt(0, 10), null));
        said.add(random.nextBoolean() ? new Received("Mara", null) : new Received(null, "nobody was in"));
        said.add(new Leave());
        said.add(new Close(null));
        List<SentOperation> sent = new ArrayList<>();
        for (int i = 0; i < said.size(); i++) {
            UUID id = i < ids.size() ? ids.get(i) : UUID.randomUUID();
            SentOperation one =
                    SentOperation.of(id, "phone", i, Job.NINE.plus(off).plusSeconds(i * 60L), said.get(i));
            sent.add(sent.isEmpty() ? one : one.after(sent.getLast().id()));
        }
        return sent;
    }

    private static Operation any(At at, Random random, List<Integer> additive, List<UUID> ids) {
        UUID task = List.of(at.amps(), at.filter(), at.drain()).get(random.nextInt(3));
        return switch (random.nextInt(9)) {
            case 0 -> new TaskAnswered(task, any(Outcome.values(), random), "words " + random.nextInt(5));
            case 1 -> new Measured(at.amps(), "volts", "" + random.nextInt(200, 250), null, null, null);
            case 2 -> new Measured(at.amps(), "amps", "" + random.nextInt(10, 30), "A", "full", null);
            case 3 ->
                new Found(
                        "urgent",
                        null,
                        "seen " + random.nextInt(99),
                        "en",
                        at.furnace(),
                        task,
                        "Mara",
                        random.nextBoolean(),
                        random.nextBoolean() ? "visit" : null,
                        null);
            case 4 ->
                new PartTaken(
                        random.nextBoolean() ? Job.FILTER : Job.PAD,
                        new BigDecimal(random.nextInt(1, 4)),
                        null,
                        at.furnace(),
                        "plan",
                        null);
            case 5 -> new HouseholdNote("note " + random.nextInt(9));
            case 6 ->
                new Photographed(
                        "%064x".formatted(random.nextInt(1000)),
                        additive.isEmpty() ? null : ids.get(additive.get(random.nextInt(additive.size()))),
                        null,
                        null);
            case 7 ->
                additive.isEmpty() ? new Leave() : new TakeBack(ids.get(additive.get(random.nextInt(additive.size()))));
            default -> new Measured(at.drain(), "ran-freely", random.nextBoolean() ? "yes" : "no", null, null, null);
        };
    }

    private static <T> T any(T[] values, Random random) {
        return values[random.nextInt(values.length)];
    }

    /** Every operation at least once, many twice, in any order, in batches of any size. */
    private static List<List<SentOperation>> scrambled(List<SentOperation> history, Random random) {
        List<SentOperation> all = new ArrayList<>(history);
        history.stream().filter(_ -> random.nextInt(3) == 0).forEach(all::add);
        Collections.shuffle(all, random);
        List<List<SentOperation>> batches = new ArrayList<>();
        while (!all.isEmpty()) {
            int size = Math.min(all.size(), random.nextInt(1, 12));
            batches.add(List.copyOf(all.subList(0, size)));
            all.subList(0, size).clear();
        }
        return batches;
    }

    /** All rows of a visit, without the ids that differ. */
    private String state(At at) {
        return shop.in(
                at.tenant(),
                () -> String.join(
                        "\n",
                        rows
                                .createNativeQuery(STATE, String.class)
                                .setParameter("visit", at.visit())
                                .getResultList()
                                .stream()
                                .map(Object::toString)
                                .toList()));
    }

    private static final String STATE = """
            select concat_ws('|', 'closure', day, minutes, extra_minutes, received_by, nobody_why, household_note, version)
              from closure where visit_id = :visit
            union all select concat_ws('|', 'task', t.task_code, o.outcome, o.reason)
              from task_outcome o join visit_task t on t.id = o.visit_task_id where o.visit_id = :visit
            union all select concat_ws('|', 'reading', code, value, unit, entered_value, standing, low, high, act_on, day)
              from reading where visit_id = :visit
            union all select concat_ws('|', 'finding', level, text, answer, next_step, day) from finding where visit_id = :visit
            union all select concat_ws('|', 'photo', p.sha256, f.text)
              from photo p left join finding f on f.id = p.finding_id where p.visit_id = :visit
            union all select concat_ws('|', 'part', part_code, quantity, why) from part_used where visit_id = :visit
            union all select concat_ws('|', 'moved', part_code, quantity, kind) from stock_movement where visit_id = :visit
            union all select concat_ws('|', 'done', task_code, day) from unit_history where visit_id = :visit
            union all select concat_ws('|', 'next', kind, finding_id is null, ended_on) from follow_up where visit_id = :visit
            union all select concat_ws('|', 'ended', how, day) from visit_ending where visit_id = :visit
            union all select concat_ws('|', 'operation', sequence, kind, state, place) from operation where visit_id = :visit
            order by 1
            """;
}
