package changeover.web.session;

import changeover.billing.documents.band.DayWords;
import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.Fact;
import changeover.contracts.catalogue.Kind;
import changeover.contracts.catalogue.UnitOfMeasure;
import changeover.contracts.customers.Equipment;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A machine as its tag says it: what one looks for first in big, the way of the air, then every fact in the reader's
 * words.
 *
 * @param kind what kind of machine, empty when the name says it already
 * @param big filter size, core, pad, make and model, or empty
 * @param air left, right, up or down; null where no air goes through a filter
 * @param core whether it holds a core that stands one way up
 * @param facts everything else that is known
 */
public record MachineInWords(
        UUID id,
        String name,
        String kind,
        String big,
        @Nullable String air,
        boolean core,
        List<Said> facts) {

    /** What one looks for before anything else, the first that is known. */
    private static final List<String> FIRST = List.of("size", "core", "pad", "canister", "air-filter", "drain-size");

    /** A caption and its value. */
    public record Said(String caption, String value) {}

    public MachineInWords {
        facts = List.copyOf(facts);
    }

    /** The machine in the language of the locale; a kind that the catalogue no longer knows is shown as written. */
    public static MachineInWords of(Equipment machine, Catalogue trade, Locale locale) {
        Kind kind = trade.findKind(machine.kind()).orElse(null);
        var words = new Writing(locale, new LinkedHashSet<>());
        String big = words.big(machine, kind);
        List<Said> facts = new ArrayList<>();
        if (kind != null) {
            words.add(facts, kind.fits(), machine.fits());
            words.add(facts, kind.nameplate(), machine.nameplate());
        }
        words.own(facts, machine.facts(), big);
        String kindName = kind == null ? machine.kind() : kind.wording().in(locale);
        return new MachineInWords(
                machine.id(),
                machine.name(),
                kindName.equalsIgnoreCase(machine.name()) ? "" : kindName,
                big,
                machine.fits().get("direction"),
                machine.fits().containsKey("core"),
                facts);
    }

    /** The first so many facts: what has room on a tag. */
    public List<Said> first(int most) {
        return facts.subList(0, Math.min(most, facts.size()));
    }

    /** The same machine with something more to say, said first. */
    public MachineInWords with(List<Said> more) {
        var all = new ArrayList<>(more);
        all.addAll(facts);
        return new MachineInWords(id, name, kind, big, air, core, all);
    }

    private record Writing(Locale locale, Set<String> said) {

        String big(Equipment machine, @Nullable Kind kind) {
            Map<String, String> fits = machine.fits();
            for (String name : FIRST) {
                String value = fits.get(name);
                Fact fact = kind == null ? null : kind.fit(name).orElse(null);
                if (value != null && fact != null) {
                    said.add(name);
                    return name.equals("size") ? size(value, fits.get("thickness")) : value(fact, value);
                }
            }
            Equipment.Facts facts = machine.facts();
            return (orEmpty(facts.make()) + " " + orEmpty(facts.model())).strip();
        }

        /** 16 × 25 × 4, whether the thickness was written with the size or apart. */
        private String size(String size, @Nullable String thickness) {
            List<String> sides = new ArrayList<>(List.of(size.split("\\s*[xX×]\\s*")));
            if (thickness != null && sides.size() == 2) {
                said.add("thickness");
                sides.add(thickness);
            }
            return String.join("\u00a0×\u00a0", sides);
        }

        void add(List<Said> facts, List<Fact> known, Map<String, String> values) {
            for (Fact fact : known) {
                String value = values.get(fact.name());
                if (value != null && said.add(fact.name())) {
                    facts.add(new Said(caption(fact), value(fact, value)));
                }
            }
        }

        void own(List<Said> facts, Equipment.Facts machine, String big) {
            String type = (orEmpty(machine.make()) + " " + orEmpty(machine.model())).strip();
            add(facts, "Make and model", "Marque et modèle", type.equals(big) ? "" : type);
            add(facts, "Serial", "Numéro de série", orEmpty(machine.serial()));
            add(facts, "Where", "Où", orEmpty(machine.location()));
            add(facts, "Installed", "Installé", day(machine.installedOn()));
            add(facts, "Installed by", "Installé par", orEmpty(machine.installedBy()));
            add(facts, "Maker’s warranty until", "Garantie du fabricant jusqu’au", day(machine.makerWarrantyUntil()));
            add(
                    facts,
                    "Labour warranty until",
                    "Garantie de main-d’œuvre jusqu’au",
                    day(machine.labourWarrantyUntil()));
            add(facts, "Registration", "Enregistrement", orEmpty(machine.registration()));
        }

        private void add(List<Said> facts, String english, String french, String value) {
            if (!value.isEmpty()) {
                facts.add(new Said(locale.getLanguage().equals("fr") ? french : english, value));
            }
        }

        private String value(Fact fact, String value) {
            String words = fact.wordingOf(value).map(one -> one.in(locale)).orElse(value);
            if (fact.form() == Fact.Form.NUMBER && locale.getLanguage().equals("fr")) {
                words = words.replace('.', ',');
            }
            String unit = fact.unit() == null
                    ? ""
                    : UnitOfMeasure.ofCode(fact.unit()).symbol().in(locale);
            return unit.isEmpty() ? words : words + "\u00a0" + unit;
        }

        private String day(@Nullable LocalDate day) {
            return day == null ? "" : DayWords.of(locale).briefWithYear(day);
        }

        /** The fact's name without what it explains in brackets, which is for whoever writes it. */
        private String caption(Fact fact) {
            String text = fact.wording().in(locale).replaceAll("\\s*\\([^)]*\\)", "");
            return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(locale) + text.substring(1);
        }

        private static String orEmpty(@Nullable String text) {
            return text == null ? "" : text;
        }
    }
}
