package changeover.contracts.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.calendar.Climate;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class CatalogueTest {

    private final Catalogue catalogue = Catalogue.shipped();

    @Test
    void thereIsATaskForEveryClause() {
        assertTrue(catalogue.tasks().size() >= 45, "tasks " + catalogue.tasks().size());
        assertTrue(
                catalogue.sentences().size() >= 30,
                "sentences " + catalogue.sentences().size());
        for (Kind kind : catalogue.kinds()) {
            assertFalse(catalogue.tasksOf(kind.code()).isEmpty(), kind.code());
        }
    }

    @Test
    void whatIsShippedPassesTheRulesThatABusinesssOwnMustPass() {
        for (Task task : catalogue.tasks()) {
            assertEquals(List.of(), TaskRules.of(task, catalogue, Climate.cold()), task.code());
        }
        for (Kind kind : catalogue.kinds()) {
            assertEquals(List.of(), KindRules.of(kind, catalogue), kind.code());
        }
    }

    @Test
    void whatATaskNamesExists() {
        for (Task task : catalogue.tasks()) {
            task.kinds().forEach(catalogue::kind);
            if (task.caution() != null) {
                assertTrue(catalogue.findCaution(task.caution()).isPresent(), task.code());
            }
            task.parts().forEach(use -> {
                assertTrue(catalogue.findPart(use.part()).isPresent(), task.code() + " " + use.part());
                assertTrue(use.quantity().signum() > 0);
            });
            for (String fact : task.when().keySet()) {
                for (String kind : task.kinds()) {
                    Fact fit = catalogue.kind(kind).fit(fact).orElseThrow();
                    task.when().get(fact).stream()
                            .filter(value -> !value.equals(Task.UNKNOWN))
                            .forEach(value -> assertTrue(fit.allows(value), task.code() + " " + value));
                }
            }
            TaskRules.seasonsOf(task.cadence())
                    .forEach(season -> assertTrue(Climate.cold().find(season).isPresent(), task.code() + " " + season));
        }
        catalogue.sentences().forEach(sentence -> sentence.kinds().forEach(catalogue::kind));
        catalogue.parts().forEach(part -> assertTrue(TradeUnit.find(part.unit()).isPresent(), part.code()));
    }

    @Test
    void everyTechnicianTaskSaysItsTicketAndEveryTaskItsBasis() {
        for (Task task : catalogue.tasks()) {
            assertNotNull(task.ticket(), task.code());
            assertTrue(task.minutes() > 0 && task.minutes() <= 120, task.code());
            assertTrue(task.who() == Who.TECHNICIAN || task.ticket() == TicketNeeded.NONE, task.code());
            assertEquals(task.basis().equals(Task.COMMON_PRACTICE), task.source() == null, task.code());
        }
        ticketOf(TicketNeeded.GAS, "gas-furnace", "gas-combustion", "gas-draft", "gas-pressure", "gas-vent");
        ticketOf(TicketNeeded.ELECTRICAL, "air-handler", "lug-torque", "breaker-heat-marks", "sequencer-limit");
        ticketOf(TicketNeeded.REFRIGERANT, "outdoor-heat-pump", "leak-search", "charge-check");
        ticketOf(TicketNeeded.ELECTRICAL, "humidifier-steam", "steam-canister");
    }

    @Test
    void everyReadingCanBeJudgedOnEveryKindItIsTakenOn() {
        for (Task task : catalogue.tasks()) {
            assertEquals(
                    task.readings().size(),
                    task.readings().stream().map(ReadingSpec::code).distinct().count(),
                    task.code());
            for (ReadingSpec reading : task.readings()) {
                String where = task.code() + " " + reading.code();
                assertEquals(reading.form() == ReadingSpec.Form.NUMBER, reading.unit() != null, where);
                if (reading.unit() != null) {
                    UnitOfMeasure.ofCode(reading.unit());
                }
                if (reading.band() != null || reading.limit() != null) {
                    assertNotNull(reading.beyond(), where);
                }
                if (reading.sentence() != null) {
                    Sentence sentence =
                            catalogue.findSentence(reading.sentence()).orElseThrow(() -> new AssertionError(where));
                    task.kinds().forEach(kind -> assertTrue(sentence.fits(kind), where + " " + kind));
                }
                task.kinds()
                        .forEach(kind -> TaskRules.platesOf(reading.band())
                                .forEach(plate -> assertTrue(
                                        catalogue.kind(kind).plate(plate).isPresent(),
                                        where + " " + kind + " " + plate)));
                if (reading.band() instanceof Band.Imbalance(String with, BigDecimal _)) {
                    assertTrue(task.reading(with).isPresent(), where);
                }
            }
        }
    }

    @Test
    void factsNameTheirUnitsAndParts() {
        for (Kind kind : catalogue.kinds()) {
            Stream.concat(kind.fits().stream(), kind.nameplate().stream()).forEach(fact -> {
                String where = kind.code() + " " + fact.name();
                assertTrue(fact.name().matches("[a-z][a-z0-9-]*"), where);
                assertEquals(fact.form() == Fact.Form.NUMBER, fact.unit() != null, where);
                assertEquals(fact.form() == Fact.Form.CHOICE, !fact.choices().isEmpty(), where);
                if (fact.part() != null) {
                    assertTrue(catalogue.findPart(fact.part()).isPresent(), where);
                }
            });
        }
    }

    private void ticketOf(TicketNeeded ticket, String kind, String... tasks) {
        for (String task : tasks) {
            assertTrue(catalogue.tasksOf(kind).contains(catalogue.task(task)), task);
            assertEquals(ticket, catalogue.task(task).ticket(), task);
        }
    }
}
