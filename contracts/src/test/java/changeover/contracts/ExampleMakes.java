package changeover.contracts;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** Makes and models that nobody sells, and what their plates say, by kind. */
final class ExampleMakes {

    /** What a plate says; make and model are empty where there is no plate. */
    record Sort(String make, String model, Map<String, String> fits, Map<String, String> nameplate) {}

    private static final List<String> FILTERS =
            List.of("16x25x1", "16x25x4", "20x20x1", "20x25x4", "16x20x1", "20x25x5");
    private static final List<String> SIDES = List.of("up", "down", "left", "right");

    private final Random random;

    ExampleMakes(Random random) {
        this.random = random;
    }

    Sort of(String kind) {
        return switch (kind) {
            case "outdoor-heat-pump" ->
                new Sort(
                        "Kelvane",
                        "KV-" + pick("24", "30", "36"),
                        pairs("drive", pick("inverter", "two-stage"), "stand", pick("stand", "wall", "ground")),
                        pairs(
                                "volts",
                                "240",
                                "compressor-amps",
                                pick("14.5", "18.2"),
                                "fan-amps",
                                "1.2",
                                "refrigerant",
                                pick("R-410A", "R-32", "R-454B"),
                                "charge",
                                pick("2.4", "3.2")));
            case "air-conditioner" ->
                new Sort(
                        "Kelvane",
                        "KC-" + pick("24", "30"),
                        pairs("drive", "single", "capacitor", "45+5 uF 440 V", "stand", "ground"),
                        pairs(
                                "volts",
                                "240",
                                "compressor-amps",
                                "12.8",
                                "fan-amps",
                                "0.9",
                                "capacitor-uf",
                                "45",
                                "refrigerant",
                                "R-410A",
                                "charge",
                                "2.1"));
            case "air-handler" ->
                new Sort(
                        "Kelvane",
                        "KA-" + pick("30", "36"),
                        pairs("motor", "ECM 1/2"),
                        pairs(
                                "banks",
                                pick("2", "3"),
                                "bank-kw",
                                "5",
                                "volts",
                                "240",
                                "static-max",
                                "0.5",
                                "blower-amps",
                                "4.3",
                                "rise-low",
                                "20",
                                "rise-high",
                                "50",
                                "refrigerant",
                                "R-410A"));
            case "furnace-coil" ->
                new Sort(
                        "Tamarac",
                        "TC-36",
                        pairs("metering", "valve"),
                        pairs("refrigerant", "R-410A", "static-max", "0.3"));
            case "gas-furnace" ->
                new Sort(
                        "Tamarac",
                        "TG-" + pick("60", "80"),
                        pairs("condensing", "yes", "flame-sensor", "FS-2", "igniter", "IG-80"),
                        pairs(
                                "gas",
                                pick("natural", "natural", "propane"),
                                "manifold-low",
                                "3.2",
                                "manifold-high",
                                "3.8",
                                "rise-low",
                                "35",
                                "rise-high",
                                "65",
                                "static-max",
                                "0.5",
                                "blower-amps",
                                "6.1"));
            case "electric-furnace" ->
                new Sort(
                        "Tamarac",
                        "TE-20",
                        pairs("sequencer", "SQ-3"),
                        pairs(
                                "banks",
                                "4",
                                "bank-kw",
                                "5",
                                "volts",
                                "240",
                                "rise-low",
                                "30",
                                "rise-high",
                                "60",
                                "static-max",
                                "0.5"));
            case "filter-slot" -> filter();
            case "condensate" ->
                new Sort(
                        "",
                        "",
                        pairs(
                                "serves",
                                pick("cooling", "all-year"),
                                "pump",
                                pick("yes", "no"),
                                "float-switch",
                                pick("yes", "no"),
                                "cold-space",
                                "no",
                                "drain-size",
                                "3/4"),
                        Map.of());
            case "humidifier-bypass" ->
                new Sort("Brumelle", "BB-400", pairs("pad", "BP-10", "damper", pick("manual", "automatic")), Map.of());
            case "humidifier-fan" -> new Sort("Brumelle", "BF-600", pairs("pad", "BP-12"), Map.of());
            case "humidifier-steam" ->
                new Sort("Brumelle", "BV-90", pairs("canister", "BC-90"), pairs("volts", "240", "amps", "22"));
            case "hrv", "erv" ->
                new Sort(
                        "Norvent",
                        (kind.equals("hrv") ? "NH-" : "NE-") + pick("150", "200"),
                        pairs(
                                "filters",
                                "NF-2",
                                "core",
                                kind.equals("hrv") ? "NC-150" : "NX-150",
                                "drains",
                                kind.equals("hrv") ? "2" : "0",
                                "hoods",
                                pick("ground", "ladder")),
                        pairs("supply-flow", "55", "exhaust-flow", "55"));
            case "ductless-head" ->
                new Sort(
                        "Kelvane",
                        "KM-" + pick("09", "12"),
                        pairs("screens", "2", "batteries", "AAA", "sleeve", pick("seen", "hidden")),
                        pairs("refrigerant", pick("R-410A", "R-32")));
            case "heat-pump-water-heater" ->
                new Sort(
                        "Ondrea",
                        "OH-190",
                        pairs("air-filter", "OF-1", "anode", "OA-25", "mixing-valve", "yes"),
                        pairs("volume", "190", "volts", "240", "element-kw", "4.5", "refrigerant", "R-134a"));
            case "rooftop-unit" ->
                new Sort(
                        "Pavilor",
                        "PR-" + pick("060", "090"),
                        pairs(
                                "filters",
                                "20x20x2",
                                "filter-count",
                                "4",
                                "belt",
                                "BX-42",
                                "economizer",
                                "yes",
                                "gas-heat",
                                "yes"),
                        pairs(
                                "volts",
                                "600",
                                "compressor-amps",
                                "9.6",
                                "blower-amps",
                                "3.4",
                                "rise-low",
                                "25",
                                "rise-high",
                                "55",
                                "manifold-low",
                                "3.2",
                                "manifold-high",
                                "3.8",
                                "refrigerant",
                                "R-410A",
                                "charge",
                                "4.6"));
            case "co-alarm" ->
                new Sort("Sentinal", "SN-1", pairs("power", "both"), pairs("replace-by", pick("2029-06", "2031-01")));
            default -> new Sort("Kelvane", "KV-0", Map.of(), Map.of());
        };
    }

    private Sort filter() {
        String size = FILTERS.get(random.nextInt(FILTERS.size()));
        String thickness = size.substring(size.lastIndexOf('x') + 1);
        String merv = thickness.equals("1") ? "8" : "11";
        return new Sort(
                "",
                "",
                pairs(
                        "size",
                        size,
                        "thickness",
                        thickness,
                        "direction",
                        pick(SIDES.toArray(String[]::new)),
                        "merv",
                        merv),
                Map.of());
    }

    private String pick(String... choices) {
        return choices[random.nextInt(choices.length)];
    }

    private static Map<String, String> pairs(String... namesAndValues) {
        Map<String, String> pairs = new LinkedHashMap<>();
        for (int at = 0; at < namesAndValues.length; at += 2) {
            pairs.put(namesAndValues[at], namesAndValues[at + 1]);
        }
        return pairs;
    }
}
