package changeover.contracts.homesfile;

import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.Fact;
import changeover.contracts.catalogue.Kind;
import changeover.contracts.words.Checks;
import changeover.contracts.words.Refusal;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Reads one row by the rules of the register and of the catalogue, and keeps every fault with its column. */
final class LineReader {

    private static final Set<String> CODES = Set.of("key", "code", "alarm");
    private static final String MAIL = "[^\\s@]+@[^\\s@]+\\.[^\\s@]+";

    private final Line line;
    private final Catalogue catalogue;
    private final String language;
    private final List<Fault> faults = new ArrayList<>();

    /** @param language the business's own, for customers whose language the file leaves open */
    LineReader(Line line, Catalogue catalogue, String language) {
        this.line = line;
        this.catalogue = catalogue;
        this.language = language;
    }

    ReadLine read() {
        ReadLine.HomeCells home = home();
        return new ReadLine(line, home, unit());
    }

    List<Fault> faults() {
        return faults;
    }

    private ReadLine.HomeCells home() {
        String said = text(Column.LANGUAGE, 10);
        String spoken = said == null ? language : said.toLowerCase(Locale.ROOT);
        if (!spoken.equals("en") && !spoken.equals("fr")) {
            fault(Column.LANGUAGE, Refusal.of("homesfile.language"));
        }
        String email = text(Column.EMAIL, Checks.LINE);
        if (email != null && !email.matches(MAIL)) {
            fault(Column.EMAIL, Refusal.of("text.not-mail"));
        }
        String country = must(Column.COUNTRY, 2).toUpperCase(Locale.ROOT);
        if (!country.isEmpty() && !Set.of(Locale.getISOCountries()).contains(country)) {
            fault(Column.COUNTRY, Refusal.of("country.shape"));
        }
        return new ReadLine.HomeCells(
                must(Column.HOME, Checks.LINE),
                must(Column.CUSTOMER, Checks.LINE),
                spoken,
                text(Column.PHONE, 60),
                email,
                must(Column.STREET, Checks.LINE),
                must(Column.CITY, Checks.LINE),
                must(Column.REGION, 10),
                text(Column.POSTAL, 20),
                country,
                degrees(Column.LATITUDE, 90),
                degrees(Column.LONGITUDE, 180),
                access());
    }

    private ReadLine.@Nullable UnitCells unit() {
        String code = text(Column.KIND, 80);
        String name = text(Column.UNIT, Checks.LINE);
        if (code == null) {
            for (Column column : List.of(
                    Column.UNIT,
                    Column.MAKE,
                    Column.MODEL,
                    Column.SERIAL,
                    Column.INSTALLED,
                    Column.FITS,
                    Column.NAMEPLATE)) {
                if (!line.cell(column).isBlank()) {
                    fault(Column.KIND, Refusal.of("homesfile.kind-missing"));
                    break;
                }
            }
            return null;
        }
        Kind kind = catalogue.findKind(code).orElse(null);
        if (kind == null) {
            fault(Column.KIND, Refusal.of("homesfile.kind-unknown", Map.of("kind", code)));
            return null;
        }
        return new ReadLine.UnitCells(
                name == null ? code : name,
                code,
                text(Column.MAKE, Checks.LINE),
                text(Column.MODEL, Checks.LINE),
                text(Column.SERIAL, Checks.LINE),
                day(),
                facts(Column.FITS, kind.fits()),
                facts(Column.NAMEPLATE, kind.nameplate()));
    }

    /** The pairs of a cell, in the order of the kind; each name one of the kind's, each value one that it allows. */
    private Map<String, String> facts(Column column, List<Fact> known) {
        Map<String, String> pairs = Pairs.read(clean(column)).orElse(null);
        if (pairs == null) {
            fault(column, Refusal.of("homesfile.pairs"));
            return Map.of();
        }
        String names = known.stream().map(Fact::name).collect(Collectors.joining(", "));
        pairs.forEach((name, value) -> {
            Fact fact = known.stream()
                    .filter(one -> one.name().equals(name))
                    .findFirst()
                    .orElse(null);
            if (fact == null) {
                fault(column, Refusal.of("homesfile.name-unknown", Map.of("name", name, "names", names)));
            } else if (!fact.allows(value)) {
                fault(column, Refusal.of("homesfile.value", Map.of("name", name, "value", value)));
            }
        });
        var ordered = new LinkedHashMap<String, String>();
        known.stream()
                .filter(fact -> pairs.containsKey(fact.name()))
                .forEach(fact -> ordered.put(fact.name(), pairs.getOrDefault(fact.name(), "")));
        return ordered;
    }

    /** {@code code front door=1234; key neighbour=at number 16}. */
    private List<ReadLine.Access> access() {
        Map<String, String> pairs = Pairs.read(clean(Column.ACCESS)).orElse(null);
        if (pairs == null) {
            fault(Column.ACCESS, Refusal.of("homesfile.access"));
            return List.of();
        }
        var access = new ArrayList<ReadLine.Access>();
        pairs.forEach((name, secret) -> {
            String[] parts = name.split(" ", 2);
            if (!CODES.contains(parts[0]) || secret.isEmpty() || secret.length() > Checks.LINE) {
                fault(Column.ACCESS, Refusal.of("homesfile.access"));
            } else {
                access.add(new ReadLine.Access(parts[0], parts.length > 1 ? parts[1] : "", secret));
            }
        });
        return access;
    }

    private @Nullable LocalDate day() {
        String said = text(Column.INSTALLED, 10);
        try {
            return said == null ? null : LocalDate.parse(said);
        } catch (DateTimeException notADay) {
            fault(Column.INSTALLED, Refusal.of("homesfile.day"));
            return null;
        }
    }

    private @Nullable BigDecimal degrees(Column column, int most) {
        String said = text(column, 24);
        if (said == null) {
            return null;
        }
        if (!said.matches("-?\\d{1,3}(\\.\\d{1,15})?")
                || new BigDecimal(said).abs().compareTo(BigDecimal.valueOf(most)) > 0) {
            fault(column, Refusal.of("homesfile.degrees", Map.of("most", most)));
            return null;
        }
        return new BigDecimal(said);
    }

    private String must(Column column, int most) {
        String said = text(column, most);
        if (said == null && faults.stream().noneMatch(fault -> fault.column().equals(column.title()))) {
            fault(column, Refusal.of("text.missing"));
        }
        return said == null ? "" : said;
    }

    private @Nullable String text(Column column, int most) {
        String said = clean(column);
        if (said.length() > most) {
            fault(column, Refusal.of("text.too-long", Map.of("max", most)));
            return null;
        }
        return said.isEmpty() ? null : said;
    }

    private String clean(Column column) {
        String said = line.cell(column).strip();
        Optional<Refusal> unfit = Checks.unfit(said);
        unfit.ifPresent(refusal -> fault(column, refusal));
        return unfit.isPresent() ? "" : said;
    }

    private void fault(Column column, Refusal why) {
        faults.add(Fault.of(line, column, why));
    }
}
