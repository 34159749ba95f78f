package changeover.web.office;

import changeover.billing.documents.band.DayWords;
import changeover.contracts.calendar.Climate;
import changeover.contracts.catalogue.Cadence;
import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.CatalogueJson;
import changeover.contracts.catalogue.Fact;
import changeover.contracts.catalogue.Kind;
import changeover.contracts.catalogue.Task;
import changeover.contracts.catalogue.TradeUnit;
import changeover.contracts.money.Money;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.Month;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.TextStyle;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a column held, as a person says it: no code, no identifier; days, hours and money in the reader's language.
 *
 * @param people names by the identifiers that columns hold
 */
record ChangeInWords(
        Locale locale, ZoneId zone, Currency currency, Catalogue trade, Climate climate, Map<String, String> people) {

    private static final Set<String> SOMEBODY =
            Set.of("customer_id", "owner_customer_id", "signer_id", "payer_id", "technician_id", "cleared_by");

    private static final Set<String> PERCENT = Set.of("discount_percent", "percent");

    static boolean isSomebody(String field) {
        return SOMEBODY.contains(field);
    }

    String table(String table) {
        return names().word("table." + table);
    }

    String field(String table, String field) {
        return names().field(table, field).orElse(field);
    }

    /** @param form how the value was written: number, string, boolean, object; empty when that is not known */
    String value(String table, String field, String value, String form) {
        if (value.isEmpty()) {
            return "";
        }
        if (RecordChanges.SECRET.contains(field)) {
            return names().word("hidden");
        }
        if (SOMEBODY.contains(field)) {
            return people.getOrDefault(value, "");
        }
        if (form.equals("boolean")) {
            return names().word(value.equals("true") ? "yes" : "no");
        }
        return names().code(table, field, value)
                .or(() -> trade(field, value, table))
                .orElseGet(() -> plain(field, value, form));
    }

    /** An instant in the business's own zone. */
    String instant(ZonedDateTime here) {
        String minute = "%02d".formatted(here.getMinute());
        String hour = french() ? here.getHour() + "\u00a0h\u00a0" + minute : here.getHour() + ":" + minute;
        return DayWords.of(locale).briefWithYear(here.toLocalDate()) + ", " + hour;
    }

    private Optional<String> trade(String field, String value, String table) {
        return switch (field) {
            case "task_code" -> trade.findTask(value).map(task -> task.wording().in(locale));
            case "kind" -> trade.findKind(value).map(kind -> kind.wording().in(locale));
            case "part_kind" -> trade.findPart(value).map(part -> part.wording().in(locale));
            case "sentence_code" ->
                trade.findSentence(value).map(one -> one.wording().in(locale));
            case "unit" ->
                Stream.of(TradeUnit.values())
                        .filter(unit -> unit.name().equals(value))
                        .map(unit -> unit.wording().in(locale))
                        .findFirst();
            case "fits_key" -> factCalled(value);
            case "fits", "nameplate" -> Optional.of(facts(value));
            case "cadence" ->
                Optional.of(Cadence.ofJson(value).sentence(climate).in(locale));
            case "body" -> Optional.of(body(table, value));
            case "weekday" -> Optional.of(DayOfWeek.of(Integer.parseInt(value)).getDisplayName(TextStyle.FULL, locale));
            case "from_month", "until_month" ->
                Optional.of(DayWords.of(locale).month(Month.of(Integer.parseInt(value))));
            default -> Optional.empty();
        };
    }

    private String plain(String field, String value, String form) {
        if (field.endsWith("_minor")) {
            return new Money(Long.parseLong(value), currency).format(locale);
        }
        if (value.matches("\\d{4}-\\d\\d-\\d\\d")) {
            return DayWords.of(locale).full(LocalDate.parse(value));
        }
        if (value.matches("\\d{4}-\\d\\d-\\d\\dT.*")) {
            return instant(OffsetDateTime.parse(value).atZoneSameInstant(zone));
        }
        if (value.matches("\\d\\d:\\d\\d:\\d\\d")) {
            LocalTime time = LocalTime.parse(value);
            String minute = "%02d".formatted(time.getMinute());
            return french() ? time.getHour() + "\u00a0h\u00a0" + minute : time.getHour() + ":" + minute;
        }
        if (form.equals("number")) {
            String bare = value.contains(".") ? value.replaceFirst("\\.?0+$", "") : value;
            String written = french() ? bare.replace('.', ',') : bare;
            return !PERCENT.contains(field) ? written : french() ? written + "\u00a0%" : written + "%";
        }
        return value;
    }

    private Optional<String> factCalled(String name) {
        return everyFact()
                .filter(fact -> fact.name().equals(name))
                .map(fact -> fact.wording().in(locale))
                .findFirst();
    }

    /** Every fact with its name; a fact that the catalogue no longer knows keeps its value only. */
    private String facts(String json) {
        Map<String, Fact> known = new LinkedHashMap<>();
        everyFact().forEach(fact -> known.putIfAbsent(fact.name(), fact));
        Map<?, ?> values = CatalogueJson.read(json, Map.class);
        return values.entrySet().stream()
                .map(entry -> {
                    String value = String.valueOf(entry.getValue());
                    Fact fact = known.get(String.valueOf(entry.getKey()));
                    return fact == null
                            ? value
                            : fact.wording().in(locale)
                                    + (french() ? "\u00a0: " : ": ")
                                    + fact.wordingOf(value)
                                            .map(words -> words.in(locale))
                                            .orElse(value);
                })
                .collect(Collectors.joining("; "));
    }

    private Stream<Fact> everyFact() {
        return trade.knownKinds().stream()
                .flatMap(kind -> Stream.concat(kind.fits().stream(), kind.nameplate().stream()));
    }

    private String body(String table, String json) {
        return switch (table) {
            case "own_kind" -> CatalogueJson.read(json, Kind.class).wording().in(locale);
            case "own_task" -> {
                Task task = CatalogueJson.read(json, Task.class);
                yield task.wording().in(locale) + "; "
                        + task.cadence().sentence(climate).in(locale) + "; " + task.minutes() + " min";
            }
            default -> "";
        };
    }

    private boolean french() {
        return locale.getLanguage().equals("fr");
    }

    private ChangeNames names() {
        return ChangeNames.of(locale);
    }
}
