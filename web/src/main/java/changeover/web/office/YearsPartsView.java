package changeover.web.office;

import changeover.billing.documents.band.DayWords;
import changeover.scheduling.supply.Range;
import changeover.scheduling.supply.SupplyAgainstStock;
import changeover.scheduling.supply.YearsSupply;
import changeover.web.session.Frame;
import changeover.web.session.Written;
import java.math.BigDecimal;
import java.time.YearMonth;
import java.util.List;
import java.util.Locale;

/**
 * The year's need of parts, in the reader's words.
 *
 * @param unknown what may be needed and of which no visit says yet how often
 */
public record YearsPartsView(String first, String last, List<Part> parts, List<String> unknown) {

    /** @param code of the business's own part; empty where it carries none */
    public record Part(
            String name,
            String code,
            String supplier,
            int homes,
            String middle,
            String between,
            String held,
            String toBuy,
            String atMost,
            List<Month> months) {}

    public record Month(String name, String middle, String between) {}

    static YearsPartsView of(SupplyAgainstStock.Seen seen, Frame frame) {
        Locale locale = frame.locale();
        return new YearsPartsView(
                frame.inWords(seen.supply().year().from()),
                frame.inWords(seen.supply().year().last()),
                seen.parts().stream().map(part -> part(part, locale)).toList(),
                seen.supply().unknown().stream()
                        .map(one -> one.part().in(locale) + " (" + one.task().in(locale) + ")")
                        .distinct()
                        .toList());
    }

    private static Part part(SupplyAgainstStock.Part part, Locale locale) {
        YearsSupply.Line line = part.line();
        Range year = line.need().year();
        return new Part(
                line.part().in(locale) + (line.size() == null ? "" : ", " + line.size()),
                line.partCode() == null ? "" : line.partCode(),
                part.supplier(),
                line.homes(),
                figure(year.middle(), locale),
                between(year, locale),
                figure(part.held(), locale),
                figure(part.toBuy(), locale),
                figure(part.toBuyAtMost(), locale),
                line.need().months().entrySet().stream()
                        .map(month -> new Month(
                                name(month.getKey(), locale),
                                figure(month.getValue().middle(), locale),
                                between(month.getValue(), locale)))
                        .toList());
    }

    private static String name(YearMonth month, Locale locale) {
        return DayWords.of(locale).month(month.getMonth()) + "\u00a0" + month.getYear();
    }

    private static String between(Range range, Locale locale) {
        if (range.low().compareTo(range.high()) == 0) {
            return "";
        }
        String to = locale.getLanguage().equals("fr") ? " à " : " to ";
        return figure(range.low(), locale) + to + figure(range.high(), locale);
    }

    private static String figure(BigDecimal quantity, Locale locale) {
        return quantity.signum() == 0 ? "0" : Written.of(quantity, locale);
    }
}
