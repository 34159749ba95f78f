package changeover.scheduling.closeout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import changeover.contracts.PostgresForTests;
import changeover.contracts.tenants.Locales;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refusals;
import changeover.contracts.words.Refused;
import changeover.scheduling.Shop;
import changeover.scheduling.closeout.Job.At;
import changeover.scheduling.closeout.OperationAnswer.State;
import changeover.scheduling.stock.KnownPart.Amount;
import changeover.scheduling.stock.Stock;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class BadInputTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    @Inject
    Job job;

    @Inject
    Shop shop;

    @Inject
    CloseOut closeOut;

    @Inject
    Amendments amendments;

    @Inject
    Findings findings;

    @Inject
    Photos photos;

    @Inject
    Stock stock;

    private static Map<String, String> bodies(At at) {
        return Map.of(
                "task", "{'task':'%s','outcome':'done','reason':'x'}".formatted(at.amps()),
                "reading",
                        "{'task':'%s','code':'amps','value':'20','unit':'A','running':'full','volts':'230'}"
                                .formatted(at.amps()),
                "finding",
                        ("{'level':'urgent','text':'bent','language':'en','equipment':'%s','task':'%s','toldTo':'M',"
                                        + "'answer':'yes','next':'visit','ticket':'gas'}")
                                .formatted(at.furnace(), at.amps()),
                "photo", "{'sha256':'%s','caption':'c','task':'%s'}".formatted("a".repeat(64), at.amps()),
                "part",
                        "{'part':'%s','quantity':'1','place':'%s','equipment':'%s','why':'plan','short':'s'}"
                                .formatted(Job.FILTER, at.van(), at.furnace()),
                "minutes", "{'minutes':50,'extra':5,'extraWhy':'x'}",
                "note", "{'text':'n'}",
                "received", "{'by':'Mara'}",
                "take_back", "{'operation':'%s'}".formatted(UUID.randomUUID()));
    }

    @Test
    void whatever_stands_in_a_field_there_is_an_answer_and_each_refusal_is_a_sentence() throws Exception {
        At at = job.open();
        int tried = 0;
        for (Map.Entry<String, String> kind : bodies(at).entrySet()) {
            ObjectNode good = (ObjectNode) JSON.readTree(kind.getValue().replace('\'', '"'));
            List<SentOperation> sent = new ArrayList<>();
            for (String field : (Iterable<String>) good::fieldNames) {
                for (String hostile : HostileTexts.ALL) {
                    ObjectNode bad = good.deepCopy();
                    bad.set(field, JSON.readTree(hostile));
                    sent.add(raw(sent.size(), kind.getKey(), bad));
                }
            }
            for (String hostile : HostileTexts.ALL) {
                sent.add(raw(sent.size(), kind.getKey(), JSON.readTree(hostile)));
            }
            List<OperationAnswer> answers = apply(at, sent);
            said(answers);
            assertEquals(answers, apply(at, sent), kind.getKey());
            tried += sent.size();
        }
        assertFalse(tried < 500, "tried " + tried);
    }

    @Test
    void unheard_of_kinds_devices_and_clocks_are_answered() throws Exception {
        At at = job.open();
        JsonNode empty = JSON.readTree("{}");
        List<SentOperation> sent = List.of(
                new SentOperation(UUID.randomUUID(), "\u0000", -5, Instant.MAX, null, "nonsense", empty),
                new SentOperation(UUID.randomUUID(), "", Long.MAX_VALUE, Instant.MIN, null, "\u0000", empty),
                new SentOperation(UUID.randomUUID(), "z".repeat(999), 1, Instant.EPOCH, null, "k".repeat(999), empty),
                new SentOperation(UUID.randomUUID(), "d", 1, Instant.EPOCH, UUID.randomUUID(), "arrive", empty));
        List<OperationAnswer> answers = apply(at, sent);
        said(answers);
        assertEquals(
                List.of(State.REFUSED, State.REFUSED, State.REFUSED, State.WAITING),
                answers.stream().map(OperationAnswer::state).toList());
    }

    @Test
    void another_visits_and_another_businesss_ids_are_not_found() {
        At at = job.open();
        At other = shop.in(at.tenant(), () -> job.visit(at.tenant(), at.home(), at.furnace(), at.van()));
        At stranger = job.open();
        for (At foreign : List.of(other, stranger)) {
            check(at, new Operation.TaskAnswered(foreign.amps(), Outcome.DONE, null), "closeout.task-not-found");
            check(at, new Operation.Measured(foreign.amps(), "amps", "1", null, null, null), "closeout.task-not-found");
        }
        check(
                at,
                new Operation.Measured(at.amps(), "amps", "1", null, null, null, stranger.furnace()),
                "closeout.instrument-not-found");
        check(
                at,
                new Operation.Found("urgent", null, "x", "en", stranger.furnace(), null, null, null, null, null),
                "closeout.equipment-not-found");
        check(
                at,
                new Operation.PartTaken(Job.FILTER, BigDecimal.ONE, stranger.van(), null, "plan", null),
                "closeout.place-not-found");
        refused(
                "closeout.visit-not-found",
                () -> apply(
                        new At(
                                at.tenant(),
                                at.home(),
                                at.furnace(),
                                stranger.visit(),
                                at.amps(),
                                at.filter(),
                                at.drain(),
                                at.van()),
                        List.of()));
        refused(
                "closeout.visit-not-found",
                () -> shop.in(
                        at.tenant(),
                        () -> amendments.amend(
                                UUID.randomUUID(), stranger.visit(), "why", List.of(), Shop.TECHNICIAN)));
        refused(
                "closeout.not-closed",
                () -> shop.in(
                        at.tenant(),
                        () -> amendments.amend(UUID.randomUUID(), at.visit(), "why", List.of(), Shop.TECHNICIAN)));
        refused(
                "stock.place-not-found",
                () -> shop.in(at.tenant(), () -> {
                    stock.receive(
                            UUID.randomUUID(), stranger.van(), List.of(new Amount(Job.FILTER, BigDecimal.ONE)), null);
                    return true;
                }));
        refused(
                "closeout.finding-not-found",
                () -> shop.in(at.tenant(), () -> {
                    findings.clear(UUID.randomUUID(), "done", Shop.TECHNICIAN);
                    return true;
                }));
    }

    @Test
    void an_operation_of_one_visit_is_no_operation_of_another() {
        At at = job.open();
        At other = shop.in(at.tenant(), () -> job.visit(at.tenant(), at.home(), at.furnace(), at.van()));
        SentOperation arrive = Job.say(1, new Operation.Arrive());
        apply(at, List.of(arrive));
        OperationAnswer answer = apply(other, List.of(arrive)).getFirst();
        assertEquals(
                "closeout.operation-elsewhere", answer.refusals().getFirst().code());
    }

    @Test
    void what_is_no_photo_is_refused() {
        At at = job.open();
        refused("picture.kind", () -> shop.in(at.tenant(), () -> photos.store("<svg/>".getBytes(), null)));
        refused(
                "closeout.photo-differs",
                () -> shop.in(at.tenant(), () -> photos.store(new byte[] {1}, "b".repeat(64))));
    }

    private void check(At at, Operation operation, String code) {
        OperationAnswer answer = apply(at, List.of(Job.say(1, operation))).getFirst();
        assertEquals(
                List.of(code), answer.refusals().stream().map(Refusal::code).toList());
    }

    private static void refused(String code, org.junit.jupiter.api.function.Executable act) {
        assertEquals(code, assertThrows(Refused.class, act).first().code());
    }

    private static SentOperation raw(int sequence, String kind, JsonNode body) {
        return new SentOperation(UUID.randomUUID(), "phone", sequence, Job.NINE, null, kind, body);
    }

    private List<OperationAnswer> apply(At at, List<SentOperation> sent) {
        return shop.in(at.tenant(), () -> closeOut.apply(at.visit(), sent, Shop.TECHNICIAN));
    }

    private static void said(List<OperationAnswer> answers) {
        for (OperationAnswer answer : answers) {
            for (Refusal refusal : answer.refusals()) {
                for (var locale : List.of(Locales.ENGLISH, Locales.FRENCH)) {
                    String sentence = Refusals.sentence(refusal, locale);
                    assertFalse(sentence.contains("{"), sentence);
                    assertFalse(sentence.length() > 400, sentence);
                }
            }
        }
    }
}
