package changeover.scheduling.closeout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.customers.AllEquipment;
import changeover.contracts.customers.Equipment;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.contracts.words.Refusal;
import changeover.scheduling.Shop;
import changeover.scheduling.closeout.Operation.MachineFound;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class MachineFoundTest {

    private static final Instant NOON = Instant.parse("2026-04-20T16:00:00Z");

    @Inject
    Shop shop;

    @Inject
    CloseOut closeOut;

    @Inject
    Homes homes;

    @Inject
    AllEquipment equipment;

    @Inject
    EntityManager rows;

    private record At(UUID home, UUID visit, UUID lookOver) {}

    private At open() {
        UUID home = shop.unread("ON");
        shop.sell(home, shop.plan().id(), java.time.LocalDate.of(2026, 4, 1));
        UUID visit = id("select id from visit where home_id = ? order by window_from limit 1", home);
        return new At(home, visit, id("select id from visit_task where visit_id = ?", visit));
    }

    private UUID id(String sql, UUID of) {
        return (UUID) rows.createNativeQuery(sql.replace("?", ":of"), UUID.class)
                .setParameter("of", of)
                .getSingleResult();
    }

    private static SentOperation say(UUID id, int sequence, Operation operation) {
        return SentOperation.of(id, "phone", sequence, NOON.plusSeconds(sequence), operation);
    }

    private static MachineFound machine(String kind, String name) {
        return new MachineFound(new Equipment.Facts(
                null,
                kind,
                name,
                "Borealis",
                "H2",
                "S-1",
                "attic",
                null,
                null,
                null,
                null,
                null,
                Map.of("size", "20x20x4"),
                Map.of("kw", "5")));
    }

    private List<SentOperation> closing(At at, int from) {
        return List.of(
                say(UUID.randomUUID(), from, new Operation.TaskAnswered(at.lookOver, Outcome.DONE, null)),
                say(UUID.randomUUID(), from + 1, new Operation.MinutesTold(40, 0, null)),
                say(UUID.randomUUID(), from + 2, new Operation.Received("Mara Quill", null)),
                say(UUID.randomUUID(), from + 3, new Operation.Close(null)));
    }

    private List<String> codes(List<OperationAnswer> answers) {
        return answers.stream()
                .flatMap(answer -> answer.refusals().stream())
                .map(Refusal::code)
                .toList();
    }

    @Test
    void a_machine_that_was_found_stands_in_the_home_under_the_clients_id_and_the_closing_reads_the_home() {
        shop.in(shop.open("CA-ON"), () -> {
            At at = open();
            UUID pump = UUID.randomUUID();
            var found = say(pump, 1, machine("test-pump", "Pump"));
            UUID finding = UUID.randomUUID();
            var onIt = say(
                    finding,
                    2,
                    new Operation.Found("recommended", null, "Light rust", "en", pump, null, null, null, null, null));
            assertEquals(List.of(), codes(closeOut.apply(at.visit, List.of(found, onIt), Shop.TECHNICIAN)));
            assertEquals(List.of(), codes(closeOut.apply(at.visit, List.of(found, onIt), Shop.TECHNICIAN)));
            assertEquals(
                    List.of(pump),
                    equipment.ofHome(at.home).stream().map(Equipment::id).toList());
            assertTrue(homes.get(at.home).map(Home::toBeRead).orElseThrow());

            assertEquals(List.of(), codes(closeOut.apply(at.visit, closing(at, 5), Shop.TECHNICIAN)));
            assertTrue(homes.get(at.home).map(home -> !home.toBeRead()).orElseThrow());
            assertEquals(2L, promises(at.home));
            assertEquals(
                    List.of("closeout.closed-already"),
                    codes(closeOut.apply(
                            at.visit,
                            List.of(say(UUID.randomUUID(), 20, machine("test-filter", "Filter"))),
                            Shop.TECHNICIAN)));
            return null;
        });
    }

    private long promises(UUID home) {
        return (long) rows.createNativeQuery("""
                        select count(*) from agreement_promise p join agreement a on a.id = p.agreement_id
                         where a.home_id = :home""", Long.class)
                .setParameter("home", home)
                .getSingleResult();
    }

    @Test
    void nothing_found_leaves_the_home_to_be_read() {
        shop.in(shop.open("CA-ON"), () -> {
            At at = open();
            assertEquals(List.of(), codes(closeOut.apply(at.visit, closing(at, 1), Shop.TECHNICIAN)));
            assertTrue(homes.get(at.home).map(Home::toBeRead).orElseThrow());
            return null;
        });
    }

    @Test
    void what_was_written_by_mistake_is_taken_back_and_written_again_under_its_name() {
        shop.in(shop.open("CA-ON"), () -> {
            At at = open();
            UUID wrong = UUID.randomUUID();
            UUID right = UUID.randomUUID();
            closeOut.apply(at.visit, List.of(say(wrong, 1, machine("test-filter", "Pump"))), Shop.TECHNICIAN);
            assertEquals(
                    List.of("closeout.machine-name"),
                    codes(closeOut.apply(
                            at.visit,
                            List.of(say(UUID.randomUUID(), 2, machine("test-pump", "Pump"))),
                            Shop.TECHNICIAN)));
            assertEquals(
                    List.of(),
                    codes(closeOut.apply(
                            at.visit,
                            List.of(
                                    say(UUID.randomUUID(), 3, new Operation.TakeBack(wrong)),
                                    say(right, 4, machine("test-pump", "Pump"))),
                            Shop.TECHNICIAN)));
            assertEquals(
                    List.of(right),
                    equipment.ofHome(at.home).stream().map(Equipment::id).toList());
            assertEquals(List.of(), equipment.takenOutOf(at.home));
            return null;
        });
    }

    @Test
    void what_its_kind_does_not_know_is_refused_at_its_place() {
        shop.in(shop.open("CA-ON"), () -> {
            At at = open();
            var body = AnswerJson.tree("""
                    {"kind": "test-pump", "name": "Pump", "fits": {"colour": "red", "size": ""}, "nameplate": 7,
                     "installedOn": "soon"}""");
            var sent = new SentOperation(UUID.randomUUID(), "phone", 1, NOON, null, "machine", body);
            assertEquals(
                    List.of("installedOn", "nameplate"),
                    closeOut.apply(at.visit, List.of(sent), Shop.TECHNICIAN).getFirst().refusals().stream()
                            .map(Refusal::field)
                            .toList());
            var unknown = AnswerJson.tree("{\"kind\": \"kiln\", \"name\": \"Kiln\\nline\"}");
            assertEquals(
                    List.of("kind", "name"),
                    closeOut
                            .apply(
                                    at.visit,
                                    List.of(new SentOperation(
                                            UUID.randomUUID(), "phone", 2, NOON, null, "machine", unknown)),
                                    Shop.TECHNICIAN)
                            .getFirst()
                            .refusals()
                            .stream()
                            .map(Refusal::field)
                            .toList());
            UUID known = UUID.randomUUID();
            closeOut.apply(at.visit, List.of(say(known, 3, machine("test-pump", "Pump"))), Shop.TECHNICIAN);
            UUID elsewhere = shop.home("ON");
            At other = open();
            assertEquals(
                    List.of("closeout.operation-elsewhere"),
                    codes(closeOut.apply(
                            other.visit,
                            List.of(say(equipment.ofHome(elsewhere).getFirst().id(), 4, machine("test-pump", "Pump"))),
                            Shop.TECHNICIAN)));
            return null;
        });
    }
}
