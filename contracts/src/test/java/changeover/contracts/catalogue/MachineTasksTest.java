package changeover.contracts.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class MachineTasksTest {

    private final Catalogue catalogue = Catalogue.shipped();

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
}
