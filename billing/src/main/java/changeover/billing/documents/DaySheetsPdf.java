package changeover.billing.documents;

import changeover.contracts.catalogue.FindingLevel;
import changeover.contracts.catalogue.ReadingSpec;
import changeover.contracts.catalogue.UnitOfMeasure;
import changeover.scheduling.closeout.DaySheet;
import changeover.scheduling.dayplan.DayPlan;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A day on paper: each technician's stops with what must be known before a door opens, and under each a close-out to fill in by
 * hand. No key and no code stands on it.
 */
public final class DaySheetsPdf {

    private static final float SQUARE = 8;
    private static final float BLANK = 15;

    private final Locale language;
    private final String business;
    private final List<DaySheet> sheets;
    private final Map<UUID, Beware> homes;
    private final Words words;
    private final Figures figures;
    private final Flow flow;

    private DaySheetsPdf(Locale language, String business, List<DaySheet> sheets, Map<UUID, Beware> homes) {
        this.language = language;
        this.business = business;
        this.sheets = sheets;
        this.homes = homes;
        this.words = Words.in(language);
        this.figures = new Figures(words);
        this.flow = new Flow(words, business, words.say("day.title"));
    }

    /**
     * The papers of all that have a stop, each technician on pages of their own; one that says so where nobody has.
     *
     * @param homes what must be known of those homes of which there is something to know
     */
    public static byte[] bytes(Locale language, String business, List<DaySheet> sheets, Map<UUID, Beware> homes) {
        return new DaySheetsPdf(
                        language,
                        business,
                        sheets.stream().filter(one -> !one.stops().isEmpty()).toList(),
                        homes)
                .draw();
    }

    private byte[] draw() {
        if (sheets.isEmpty()) {
            flow.down(20);
            line(Typeface.REGULAR, Flow.LEFT, words.say("day.nothing"));
        }
        for (int at = 0; at < sheets.size(); at++) {
            if (at > 0) {
                flow.speak(words);
            }
            technician(sheets.get(at));
        }
        return flow.bytes(language, words.say("day.title") + " " + business, words.say("caution.foot"));
    }

    private void technician(DaySheet sheet) {
        float base = flow.y() + 19;
        flow.page().text(Typeface.HEADING, Type.TITLE, Ink.INK, Flow.LEFT, base, sheet.technician());
        flow.page()
                .textRight(
                        Typeface.BOLD,
                        Type.TEXT,
                        Ink.INK,
                        Flow.RIGHT,
                        base,
                        Flow.WIDTH * 0.4f,
                        figures.day(sheet.day()));
        flow.to(base + 8);
        String load = sheet.stops().stream()
                .flatMap(stop -> stop.load().stream())
                .filter(DayPlan.Load::eachTime)
                .map(this::load)
                .distinct()
                .collect(Collectors.joining("; "));
        if (!load.isEmpty()) {
            RunIn.draw(flow, words.say("day.load"), load);
        }
        sheet.stops().forEach(this::stop);
    }

    private String load(DayPlan.Load one) {
        String size = one.size();
        return figures.number(one.quantity()) + "\u00a0× " + one.part().in(language) + (size == null ? "" : " " + size);
    }

    private void stop(DaySheet.Stop stop) {
        DaySheet.HomeFacts home = stop.home();
        flow.section(figures.time(stop.starts()) + "   " + home.address(), 60);
        flow.page().line(Ink.INK, 0.75f, Flow.LEFT, flow.y(), Flow.RIGHT, flow.y());
        flow.down(2);
        Beware beware = homes.getOrDefault(stop.homeId(), Beware.NOTHING);
        beware.stopped().forEach(one -> line(Typeface.BOLD, Flow.LEFT, words.say("day.stopped") + " " + one));
        if (!beware.shut().isEmpty()) {
            line(Typeface.BOLD, Flow.LEFT, beware.shut());
        }
        for (DaySheet.Danger danger : stop.hazards()) {
            line(Typeface.BOLD, Flow.LEFT, words.say("day.danger." + danger.kind()) + ". " + danger.note());
        }
        told("day.opens", join(home.opens(), home.phone()));
        told("day.in", home.gettingIn());
        told("day.note", stop.note());
        stop.openFindings().stream()
                .filter(one -> one.level() == FindingLevel.URGENT || one.level() == FindingLevel.DO_NOT_USE)
                .filter(one -> !beware.findings().contains(one.id()))
                .forEach(one -> told("day.open", join(one.equipment(), one.in(language.getLanguage()))));
        stop.tasks().forEach(this::task);
        closing();
    }

    private void told(String key, @Nullable String text) {
        if (text != null && !text.isBlank()) {
            RunIn.draw(flow, words.say(key), text);
        }
    }

    private static String join(@Nullable String one, @Nullable String other) {
        return one == null ? (other == null ? "" : other) : other == null ? one : one + ", " + other;
    }

    private void task(DaySheet.TaskLine task) {
        flow.need(Type.TEXT_LINE + 6 + BLANK);
        flow.down(4);
        float top = flow.y() + 3;
        flow.page().box(Ink.INK, 0.8f, Flow.LEFT, top, SQUARE, SQUARE);
        String machine = task.equipment();
        String what = (machine == null ? "" : machine + ": ") + task.wording().in(language);
        flow.paragraph(
                Typeface.BOLD,
                Type.TEXT,
                Type.TEXT_LINE,
                Ink.INK,
                Flow.LEFT + SQUARE + 6,
                Flow.WIDTH - SQUARE - 6,
                task.mayDoIt() ? what : what + " (" + words.say("day.no-ticket") + ")");
        task.readings().forEach(this::reading);
    }

    private void reading(DaySheet.ReadingLine line) {
        float x = Flow.LEFT + SQUARE + 6;
        ReadingSpec spec = line.spec();
        float room = Flow.WIDTH * 0.42f;
        String asked = spec.wording().in(language)
                + (spec.state() == null ? "" : ", " + spec.state().in(language));
        List<String> wrapped = Lines.wrap(Typeface.REGULAR, Type.TEXT, room, asked);
        float more = (wrapped.size() - 1) * Type.TEXT_LINE;
        flow.need(BLANK + more);
        flow.down(BLANK + more);
        float base = flow.y() - 3 - more;
        flow.lines(Typeface.REGULAR, Type.TEXT, Type.TEXT_LINE, Ink.INK, x, base, wrapped);
        float from = x + room + 8;
        if (spec.form() == ReadingSpec.Form.YES_NO) {
            String yes = words.say("answer.yes");
            flow.page().box(Ink.INK, 0.8f, from, base - SQUARE, SQUARE, SQUARE);
            flow.page().text(Typeface.REGULAR, Type.TEXT, Ink.INK, from + 12, base, yes);
            flow.page().box(Ink.INK, 0.8f, from + 50, base - SQUARE, SQUARE, SQUARE);
            flow.page().text(Typeface.REGULAR, Type.TEXT, Ink.INK, from + 62, base, words.say("answer.no"));
            return;
        }
        flow.page().line(Ink.INK, 0.6f, from, base + 2, from + 70, base + 2);
        flow.page().text(Typeface.REGULAR, Type.SMALL, Ink.QUIET, from + 75, base, unit(spec) + band(line));
    }

    private String unit(ReadingSpec spec) {
        String code = spec.unit();
        UnitOfMeasure unit = code == null ? null : UnitOfMeasure.find(code).orElse(null);
        return unit == null
                ? ""
                : unit == UnitOfMeasure.OHM ? "ohm" : unit.symbol().in(language);
    }

    private String band(DaySheet.ReadingLine line) {
        BigDecimal low = line.low();
        BigDecimal high = line.high();
        if (low == null && high == null) {
            return "";
        }
        String said = low == null
                ? words.say("day.at-most", "high", shown(high))
                : high == null ? words.say("day.at-least", "low", shown(low)) : shown(low) + " – " + shown(high);
        return "  (" + said + ")";
    }

    private String shown(@Nullable BigDecimal value) {
        return value == null
                ? ""
                : figures.number(value.setScale(Math.min(2, Math.max(0, value.scale())), RoundingMode.HALF_UP)
                        .stripTrailingZeros());
    }

    /** What is written by hand when the work is done. */
    private void closing() {
        flow.down(4);
        blanks("day.arrived", "day.left", "day.minutes", "day.extra");
        blanks("day.parts");
        blanks("day.found");
        blanks("day.not-done");
        blanks("day.received");
        flow.down(6);
    }

    /** Captions with a line to write on behind each, side by side. */
    private void blanks(String... keys) {
        flow.need(BLANK + 3);
        flow.down(BLANK + 3);
        float base = flow.y() - 3;
        float each = Flow.WIDTH / keys.length;
        for (int at = 0; at < keys.length; at++) {
            float x = Flow.LEFT + at * each;
            String caption = Letters.plain(words.say(keys[at]));
            flow.page().text(Typeface.REGULAR, Type.SMALL, Ink.QUIET, x, base, caption);
            float from = x + Typeface.REGULAR.width(caption, Type.SMALL) + 5;
            flow.page().line(Ink.INK, 0.6f, from, base + 2, x + each - 10, base + 2);
        }
    }

    private void line(Typeface face, float x, String text) {
        flow.paragraph(face, Type.TEXT, Type.TEXT_LINE, Ink.INK, x, Flow.WIDTH, text);
    }
}
