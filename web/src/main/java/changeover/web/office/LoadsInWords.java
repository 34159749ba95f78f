package changeover.web.office;

import changeover.scheduling.dayplan.DayPlan;
import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.Loading;
import changeover.scheduling.stock.StockPlace;
import changeover.web.session.Written;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Collectors;

/** What the vans load and what is bought, as the page says it. */
final class LoadsInWords {

    private LoadsInWords() {}

    public record Line(String part, String needed, String least, String held, String load, String lacking) {}

    /** @param seen what its button writes down, as shown */
    public record Van(
            UUID place,
            String name,
            List<Line> lines,
            List<String> notCarried,
            boolean loads,
            String seen,
            UUID operation) {}

    public record Buy(String part, String forVans, String forShelf, String quantity) {}

    public record From(String supplier, List<Buy> lines) {}

    static Van van(Loading.Van van, VanLoads.Seen seen, Locale locale) {
        List<Line> lines = van.lines().stream()
                .map(line -> new Line(
                        name(seen.parts(), line.partCode(), locale),
                        figure(line.needed(), locale),
                        figure(line.least(), locale),
                        figure(line.held(), locale),
                        figure(line.load(), locale),
                        figure(line.lacking(), locale)))
                .toList();
        List<String> strange = seen.notCarried().getOrDefault(van.place(), List.of()).stream()
                .map(load -> strange(load, locale))
                .distinct()
                .toList();
        StockPlace place = Objects.requireNonNull(seen.places().get(van.place()));
        return new Van(
                van.place(),
                place.name(),
                lines,
                strange,
                !van.toLoad().isEmpty() && seen.shelf().isPresent(),
                seen(van.toLoad()),
                UUID.randomUUID());
    }

    static List<From> buy(VanLoads.Seen seen, Map<String, String> from, Locale locale) {
        return seen.loading().buy().stream()
                .collect(Collectors.groupingBy(one -> from.getOrDefault(one.partCode(), "")))
                .entrySet()
                .stream()
                .sorted(Comparator.comparing((Map.Entry<String, List<Loading.Buy>> one) ->
                                one.getKey().isEmpty())
                        .thenComparing(Map.Entry::getKey))
                .map(one -> new From(
                        one.getKey(),
                        one.getValue().stream()
                                .map(buy -> new Buy(
                                        name(seen.parts(), buy.partCode(), locale),
                                        figure(buy.forVans(), locale),
                                        figure(buy.forShelf(), locale),
                                        figure(buy.quantity(), locale)))
                                .toList()))
                .toList();
    }

    private static String name(Map<String, KnownPart> parts, String code, Locale locale) {
        KnownPart part = parts.get(code);
        return part == null ? code : part.name().in(locale);
    }

    private static String strange(DayPlan.Load load, Locale locale) {
        return load.size() == null ? load.part().in(locale) : load.part().in(locale) + " " + load.size();
    }

    static List<KnownPart.Amount> amounts(List<Loading.Line> lines) {
        return lines.stream()
                .map(line -> new KnownPart.Amount(line.partCode(), line.load()))
                .toList();
    }

    static String seen(List<Loading.Line> lines) {
        return lines.stream()
                .map(line ->
                        line.partCode() + "=" + line.load().stripTrailingZeros().toPlainString())
                .collect(Collectors.joining(" "));
    }

    private static String figure(BigDecimal quantity, Locale locale) {
        return quantity.signum() == 0 ? "" : Written.of(quantity, locale);
    }
}
