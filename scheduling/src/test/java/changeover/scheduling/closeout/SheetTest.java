package changeover.scheduling.closeout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.catalogue.ReadingSpec;
import changeover.contracts.customers.Equipment;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Wording;
import changeover.scheduling.closeout.Operation.Arrive;
import changeover.scheduling.closeout.Operation.Close;
import changeover.scheduling.closeout.Operation.Found;
import changeover.scheduling.closeout.Operation.Leave;
import changeover.scheduling.closeout.Operation.Measured;
import changeover.scheduling.closeout.Operation.MinutesTold;
import changeover.scheduling.closeout.Operation.PartTaken;
import changeover.scheduling.closeout.Operation.Photographed;
import changeover.scheduling.closeout.Operation.Received;
import changeover.scheduling.closeout.Operation.TakeBack;
import changeover.scheduling.closeout.Operation.TaskAnswered;
import changeover.scheduling.visits.VisitEnd;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class SheetTest {

    private static final UUID HOME = id(1);
    private static final UUID FURNACE = id(2);
    private static final UUID CLEAN = id(3);
    private static final UUID GAS = id(4);
    private static final UUID VAN = id(5);
    private static final Instant NINE = Instant.parse("2026-10-14T13:00:00Z");

    private static UUID id(long number) {
        return new UUID(9, number);
    }

    private static Taken taken(int number, Operation operation) {
        return new Taken(id(100 + number), "phone", NINE.plusSeconds(600L * number), id(6), operation);
    }

    private static Sheet sheet(Operation... said) {
        Sheet sheet = Sheet.BLANK;
        for (int i = 0; i < said.length; i++) {
            sheet = sheet.with(taken(i, said[i]));
        }
        return sheet;
    }

    private static TaskAtHand task(UUID id, @Nullable String ticket) {
        Wording words = new Wording("a task", "une tâche");
        ReadingSpec dT = new ReadingSpec(
                "split", words, ReadingSpec.Form.NUMBER, "degF-apart", null, null, null, null, null, null);
        return new TaskAtHand(
                id, FURNACE, "t", words, words, "common practice", "do", ticket, 10, List.of(dT), List.of(), null);
    }

    private static VisitAtHand visit(@Nullable VisitEnd ended) {
        return new VisitAtHand(
                id(7),
                HOME,
                null,
                "plan",
                null,
                60,
                null,
                null,
                ended,
                Map.of(CLEAN, task(CLEAN, null), GAS, task(GAS, "gas")),
                Map.of(FURNACE, new MachineAtHand(FURNACE, "gas-furnace", "Furnace", Map.of(), Map.of())));
    }

    private static final Surroundings SHOP = new Surroundings() {
        @Override
        public boolean knowsPart(String partCode) {
            return partCode.equals("filter");
        }

        @Override
        public boolean knowsSentence(String sentenceCode) {
            return sentenceCode.equals("rust");
        }

        @Override
        public Optional<UUID> place(@Nullable UUID named) {
            return named == null || named.equals(VAN) ? Optional.of(VAN) : Optional.empty();
        }

        @Override
        public BigDecimal onHand(UUID place, String partCode) {
            return BigDecimal.TWO;
        }

        @Override
        public Set<String> tickets() {
            return Set.of("electrical");
        }

        @Override
        public List<Refusal> aboutMachine(Equipment.Facts facts) {
            return List.of();
        }

        @Override
        public boolean knowsInstrument(UUID id) {
            return false;
        }

        @Override
        public boolean knowsMachine(UUID id) {
            return false;
        }
    };

    private static void check(Sheet sheet, Operation operation, String... expected) {
        List<String> refusals = new SheetRules(visit(null), SHOP)
                .refusals(sheet, operation).stream().map(Refusal::code).toList();
        assertEquals(
                Arrays.stream(expected)
                        .map(code -> code.startsWith("stock.") ? code : "closeout." + code)
                        .toList(),
                refusals);
    }

    private static PartTaken part(String code, int quantity, @Nullable String shortWhy) {
        return new PartTaken(code, BigDecimal.valueOf(quantity), null, null, "plan", shortWhy);
    }

    private static Found found(@Nullable String sentence, @Nullable UUID machine) {
        return new Found(
                "urgent", sentence, sentence == null ? "x" : null, "en", machine, null, null, null, null, null);
    }

    @Test
    void what_may_be_written() {
        check(Sheet.BLANK, new TaskAnswered(CLEAN, Outcome.DONE, null));
        check(Sheet.BLANK, new TaskAnswered(id(99), Outcome.DONE, null), "task-not-found");
        check(Sheet.BLANK, new TaskAnswered(GAS, Outcome.DONE, null), "ticket");
        check(Sheet.BLANK, new TaskAnswered(GAS, Outcome.DEFERRED, "no ticket"));
        check(Sheet.BLANK, new Measured(CLEAN, "split", "20,5", null, null, null));
        check(Sheet.BLANK, new Measured(CLEAN, "split", "11.4", "K", null, null));
        check(Sheet.BLANK, new Measured(CLEAN, "split", "20", "degF", null, null), "reading-unit");
        check(Sheet.BLANK, new Measured(CLEAN, "split", "NaN", null, null, null), "operation.number");
        check(Sheet.BLANK, new Measured(CLEAN, "other", "20", null, null, null), "reading-not-asked");
        check(Sheet.BLANK, found("rust", FURNACE));
        check(Sheet.BLANK, found("rumour", FURNACE), "sentence-not-found");
        check(Sheet.BLANK, found(null, id(99)), "equipment-not-found");
        check(Sheet.BLANK, part("filter", 2, null));
        check(Sheet.BLANK, part("filter", 3, null), "stock.short");
        check(Sheet.BLANK, part("filter", 3, "bought on the way"));
        check(sheet(part("filter", 2, null)), part("filter", 1, null), "stock.short");
        check(Sheet.BLANK, part("pad", 1, null), "part-not-found");
        check(Sheet.BLANK, new PartTaken("filter", BigDecimal.ONE, id(99), null, "plan", null), "place-not-found");
        check(Sheet.BLANK, new Photographed("a".repeat(64), id(100), null, null), "finding-not-found");
        check(sheet(found("rust", null)), new Photographed("a".repeat(64), id(100), null, null));
        check(sheet(found("rust", null)), new TakeBack(id(100)));
        check(sheet(new Arrive()), new TakeBack(id(100)), "take-back");
        check(sheet(new Close(null)), new Arrive(), "closed-already");
    }

    @Test
    void an_ended_visit_takes_nothing() {
        assertEquals(
                "closeout.visit-ended",
                new SheetRules(visit(VisitEnd.CANCELLED), SHOP)
                        .refusals(Sheet.BLANK, new Arrive())
                        .getFirst()
                        .code());
    }

    @Test
    void it_closes_when_nothing_is_missing() {
        check(Sheet.BLANK, new Close(null), "task-open", "task-open", "received-by", "minutes");
        Operation[] all = {
            new Arrive(),
            new TaskAnswered(CLEAN, Outcome.DONE, null),
            new TaskAnswered(GAS, Outcome.DEFERRED, "no ticket"),
            new Received("Mara", null),
            part("filter", 2, null),
            new Leave()
        };
        check(sheet(all), new Close(null));
    }

    @Test
    void minutes_are_as_told_or_from_arriving_to_leaving_by_one_clock() {
        assertEquals(OptionalInt.empty(), sheet(new Arrive()).minutes());
        assertEquals(OptionalInt.of(10), sheet(new Arrive(), new Leave()).minutes());
        assertEquals(
                OptionalInt.of(45),
                sheet(new Arrive(), new MinutesTold(45, 0, null), new Leave()).minutes());
        assertEquals(
                OptionalInt.of(10),
                sheet(new Arrive(), new Leave(), new Arrive()).minutes(),
                "the first arrival");
        assertEquals(
                OptionalInt.of(30),
                sheet().with(taken(7, new Arrive()))
                        .with(taken(1, new Arrive()))
                        .with(taken(4, new Leave()))
                        .minutes(),
                "the earliest arrival, whenever it was said");
        assertEquals(OptionalInt.empty(), sheet(new Leave(), new Arrive()).minutes());
    }

    @Test
    void what_is_taken_back_no_longer_stands() {
        assertEquals(
                1,
                sheet(part("filter", 1, null), part("filter", 1, null), new TakeBack(id(100)))
                        .standing()
                        .size());
    }

    @Test
    void what_follows_from_a_sheet() {
        Found no = new Found("urgent", "rust", null, null, null, null, "Mara", false, "estimate", null);
        Found yes = new Found("urgent", "rust", null, null, null, null, "Mara", true, "estimate", null);
        Consequences all = Consequences.of(sheet(
                new TaskAnswered(CLEAN, Outcome.DONE, null),
                new TaskAnswered(GAS, Outcome.DEFERRED, "x"),
                part("filter", 1, null),
                no,
                yes,
                found("rust", null)));
        assertEquals(Set.of(CLEAN), all.done());
        assertEquals(Set.of(id(102)), all.parts().keySet());
        assertEquals(
                Set.of(
                        new Consequences.Next("visit", null, GAS),
                        new Consequences.Next("refused", id(103), null),
                        new Consequences.Next("estimate", id(104), null)),
                all.next());
    }
}
