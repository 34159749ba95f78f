package changeover.contracts.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.calendar.Climate;
import changeover.contracts.words.Wording;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class CatalogueTest {

    private static final Set<String> ENGLISH = Set.of(
            "the",
            "and",
            "of",
            "with",
            "is",
            "are",
            "or",
            "when",
            "its",
            "it",
            "at",
            "by",
            "clean",
            "check",
            "change",
            "filter",
            "before",
            "unit",
            "air-free",
            "look",
            "water",
            "pump",
            "heat");

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
            seasonsOf(task.cadence())
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
                        .forEach(kind -> platesOf(reading.band())
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

    @Test
    void everyWordStandsInBothLanguages() throws IOException {
        for (String file : List.of("kinds", "tasks", "parts", "cautions", "sentences")) {
            try (var in = Catalogue.class.getResourceAsStream(file + ".json")) {
                checkWords(new ObjectMapper().readTree(in), file);
            }
        }
    }

    @Test
    void everyCautionEndsWithCodesAndLicences() {
        for (Caution caution : catalogue.cautions()) {
            assertTrue(caution.wording().en().contains("local codes"), caution.code());
            assertTrue(caution.wording().en().endsWith("belongs to licensed people."), caution.code());
            assertTrue(caution.wording().fr().contains("codes locaux"), caution.code());
            assertTrue(caution.wording().fr().endsWith("titulaires des licences requises."), caution.code());
        }
        Wording chemicals = catalogue.findCaution("chemicals").orElseThrow().wording();
        Stream.of("bleach", "acid", "ammonia", "another cleaner")
                .forEach(word -> assertTrue(chemicals.en().contains(word), word));
    }

    @Test
    void findingsComeInEveryLevel() {
        Map<FindingLevel, Long> count = catalogue.sentences().stream()
                .collect(Collectors.groupingBy(
                        Sentence::level, () -> new EnumMap<>(FindingLevel.class), Collectors.counting()));
        assertEquals(Set.of(FindingLevel.values()), count.keySet());
    }

    @Test
    void aBusinessAddsKindsAndTasksAsData() {
        Kind kind = CatalogueJson.read("""
                {"code":"pellet-stove","wording":{"en":"Pellet stove","fr":"Poêle à granules"},
                 "fits":[{"name":"gasket","wording":{"en":"gasket","fr":"joint"},"form":"text"}],"nameplate":[]}""", Kind.class);
        Task task = CatalogueJson.read("""
                {"code":"pellet-ash","kinds":["pellet-stove"],
                 "wording":{"en":"Empty the ash","fr":"Vider les cendres"},"who":"technician","ticket":"none",
                 "minutes":10,"cadence":{"how":"each-season","seasons":["heating"]},"basis":"common practice"}""", Task.class);
        Catalogue own = catalogue.with(List.of(kind), List.of(task));
        assertEquals(List.of(task), own.tasksOf("pellet-stove"));
        assertEquals(task, CatalogueJson.read(CatalogueJson.write(task), Task.class));
        assertEquals(kind, CatalogueJson.read(CatalogueJson.write(kind), Kind.class));
        assertTrue(catalogue.findKind("pellet-stove").isEmpty());
        assertThrows(IllegalArgumentException.class, () -> CatalogueJson.read("{\"code\":1,\"odd\":2}", Kind.class));
        for (Task shipped : catalogue.tasks()) {
            assertEquals(shipped, CatalogueJson.read(CatalogueJson.write(shipped), Task.class));
        }
    }

    @Test
    void factsDecideWhichTasksAMachineGets() {
        tasks("filter-slot", Map.of("thickness", "1"), "filter-thin", true);
        tasks("filter-slot", Map.of("thickness", "4"), "filter-thin", false);
        tasks("filter-slot", Map.of("thickness", "4"), "filter-deep", true);
        tasks("filter-slot", Map.of(), "filter-thin", true);
        tasks("condensate", Map.of("pump", "no"), "condensate-pump", false);
        tasks("condensate", Map.of("pump", "yes"), "condensate-pump", true);
        tasks("outdoor-heat-pump", Map.of("drive", "inverter"), "capacitor", false);
        tasks("erv", Map.of(), "exchanger-core-hrv", false);
        tasks("erv", Map.of(), "exchanger-core-erv", true);
    }

    @Test
    void theMachinesLabelOutranksTheCatalogue() {
        label("filter-deep", "12", new Cadence.CheckThenReplace(1, 12));
        label("filter-thin", "1", new Cadence.CheckThenReplace(1, 1));
        label("exchanger-filters", "4", new Cadence.EveryMonths(4, 1, 4));
        label("exchanger-filters", "twelve", null);
        label("exchanger-filters", "61", null);
        label("exchanger-hoods", "4", null);
        label("filter-at-visit", "4", null);
        Task task = catalogue.task("filter-thin");
        UUID unit = new UUID(1, 1);
        Interval business = new Interval("filter-thin", null, new Cadence.CheckThenReplace(1, 2), "our own", null);
        Interval machine = new Interval("filter-thin", unit, new Cadence.CheckThenReplace(1, 5), "label", "its label");
        assertEquals(
                machine.cadence(),
                Interval.over(task, unit, List.of(business, machine)).cadence());
        assertEquals(
                business.cadence(),
                Interval.over(task, new UUID(1, 2), List.of(business, machine)).cadence());
        assertEquals(task, Interval.over(task, unit, List.of()));
        assertEquals(
                "our own", Interval.over(task, null, List.of(machine, business)).basis());
    }

    @Test
    void aRefrigerantThatBurnsHasItsOwnCaution() {
        cautions("coil-oil", "R-32", "refrigerant", "a2l");
        cautions("coil-oil", "R-410A", "refrigerant");
        cautions("leak-search", "R-454B", "leak-search", "a2l");
        cautions("capacitor", "R-32", "electrical");
        cautions("coil-rust", "R-32");
    }

    private void label(String task, String months, @Nullable Cadence expected) {
        assertEquals(
                Optional.ofNullable(expected),
                LabelInterval.of(
                                catalogue.task(task),
                                new UUID(1, 1),
                                Map.of(LabelInterval.LABEL_MONTHS, months),
                                catalogue)
                        .map(Interval::cadence),
                task + " " + months);
    }

    private void cautions(String task, String refrigerant, String... codes) {
        assertEquals(
                List.of(codes),
                catalogue.cautionsFor(catalogue.task(task), Map.of("refrigerant", refrigerant)).stream()
                        .map(Caution::code)
                        .toList());
    }

    private void tasks(String kind, Map<String, String> fits, String task, boolean expected) {
        assertEquals(expected, catalogue.tasksFor(kind, fits).contains(catalogue.task(task)), kind + fits + task);
    }

    private void ticketOf(TicketNeeded ticket, String kind, String... tasks) {
        for (String task : tasks) {
            assertTrue(catalogue.tasksOf(kind).contains(catalogue.task(task)), task);
            assertEquals(ticket, catalogue.task(task).ticket(), task);
        }
    }

    private static List<String> seasonsOf(Cadence cadence) {
        return switch (cadence) {
            case Cadence.BeforeSeason(String season, var _) -> List.of(season);
            case Cadence.EachSeason(List<String> seasons) -> seasons;
            case Cadence.EveryMonths _, Cadence.TimesAYear _, Cadence.CheckThenReplace _, Cadence.OnRequest _ ->
                List.of();
        };
    }

    private static List<String> platesOf(@Nullable Band band) {
        if (band == null) {
            return List.of();
        }
        return switch (band) {
            case Band.PlateTolerance(String plate, BigDecimal _) -> List.of(plate);
            case Band.PlateRange(String low, String high) ->
                Stream.of(low, high).filter(name -> name != null).toList();
            case Band.ElementAmps(String kilowatts, String plateVolts, String _, BigDecimal _) ->
                List.of(kilowatts, plateVolts);
            case Band.ElementOhms(String kilowatts, String plateVolts, BigDecimal _) -> List.of(kilowatts, plateVolts);
            case Band.Fixed _, Band.Answer _, Band.Imbalance _ -> List.of();
        };
    }

    private static void checkWords(JsonNode node, String where) {
        if (node.has("en") || node.has("fr")) {
            String en = node.path("en").asText();
            String fr = node.path("fr").asText();
            assertFalse(en.isBlank() || fr.isBlank(), where + " " + node);
            for (String word : fr.toLowerCase(Locale.ROOT).split("[^\\p{L}-]+")) {
                assertFalse(ENGLISH.contains(word), where + ": \"" + word + "\" in " + fr);
            }
            assertFalse(fr.matches(".* [;:%?!].*"), "no-break space missing: " + fr);
            assertFalse(fr.contains("'") || en.contains("'"), "straight apostrophe: " + node);
            return;
        }
        node.forEach(child -> checkWords(child, where));
    }
}
