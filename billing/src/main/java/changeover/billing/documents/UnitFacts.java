package changeover.billing.documents;

import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.Fact;
import changeover.contracts.catalogue.Kind;
import changeover.contracts.customers.Equipment;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What a machine's tag shows: first the part that fits it (filter size, pad, core), else its model; then the rest. */
record UnitFacts(Equipment machine, Catalogue catalogue, Words words) {

    private static final String DIRECTION = "direction";

    /** The value in big type, null when nothing is written down yet. */
    @Nullable
    String big() {
        Fact part = part();
        if (part != null) {
            String value = said(part);
            String thickness = machine.fits().get("thickness");
            boolean thick = thickness != null && value != null && !value.matches(".*×.*×.*");
            return thick ? value + " × " + thickness : value;
        }
        return machine.facts().model();
    }

    private @Nullable Fact part() {
        return fits().stream()
                .filter(fact -> fact.part() != null && said(fact) != null)
                .findFirst()
                .orElse(null);
    }

    /** Which way the air goes through the filter; null where that is not written down. */
    @Nullable
    Air air() {
        String way = machine.fits().get(DIRECTION);
        return way == null ? null : Air.valueOf(way.toUpperCase(Locale.ROOT));
    }

    /** Everything else that fits it, then where it stands, its serial number and its warranties. */
    List<CardSheet.Pair> rest() {
        List<CardSheet.Pair> rest = new ArrayList<>();
        Equipment.Facts facts = machine.facts();
        Fact part = part();
        for (Fact fact : fits()) {
            String value = said(fact);
            boolean inBig = fact == part || part != null && fact.name().equals("thickness");
            if (value != null && !inBig && !fact.name().equals(DIRECTION)) {
                rest.add(new CardSheet.Pair(caption(fact), value));
            }
        }
        add(rest, "unit-fact.make", facts.make());
        if (facts.model() != null && !facts.model().equals(big())) {
            add(rest, "unit-fact.model", facts.model());
        }
        add(rest, "unit-fact.serial", facts.serial());
        add(rest, "unit-fact.location", facts.location());
        Figures figures = new Figures(words);
        add(rest, "unit-fact.installed", facts.installedOn() == null ? null : figures.day(facts.installedOn()));
        add(
                rest,
                "unit-fact.maker-warranty",
                facts.makerWarrantyUntil() == null ? null : figures.day(facts.makerWarrantyUntil()));
        add(
                rest,
                "unit-fact.labour-warranty",
                facts.labourWarrantyUntil() == null ? null : figures.day(facts.labourWarrantyUntil()));
        return rest;
    }

    private List<Fact> fits() {
        return catalogue.findKind(machine.kind()).map(Kind::fits).orElse(List.of());
    }

    private @Nullable String said(Fact fact) {
        Map<String, String> fits = machine.fits();
        String value = fits.get(fact.name());
        if (value == null || value.isBlank()) {
            return null;
        }
        return fact.wordingOf(value)
                .map(wording -> wording.in(words.language()))
                .orElseGet(() -> value.replaceAll("(?<=\\d)\\s*[xX]\\s*(?=\\d)", " × "));
    }

    /** The fact's name without its explanation, with a capital. */
    private String caption(Fact fact) {
        String name = fact.wording().in(words.language()).split("[,(]", 2)[0].strip();
        return name.substring(0, 1).toUpperCase(words.language()) + name.substring(1);
    }

    private void add(List<CardSheet.Pair> rest, String caption, @Nullable String value) {
        if (value != null && !value.isBlank()) {
            rest.add(new CardSheet.Pair(words.say(caption), value));
        }
    }
}
