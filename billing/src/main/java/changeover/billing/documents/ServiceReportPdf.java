package changeover.billing.documents;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What was read, found and done at a visit, what happens next, and what the household does itself until then. */
public final class ServiceReportPdf {

    private final ReportSheet sheet;
    private final Words words;
    private final Figures figures;
    private final Flow flow;

    private ServiceReportPdf(ReportSheet sheet) {
        this.sheet = sheet;
        this.words = Words.in(sheet.language());
        this.figures = new Figures(words);
        String place = sheet.home().isEmpty() ? sheet.customer() : sheet.home().getFirst();
        this.flow = new Flow(words, sheet.from().name(), words.say("report.title") + ", " + place);
    }

    /** The paper as PDF/A-3b. */
    public static byte[] bytes(ReportSheet sheet) {
        return new ServiceReportPdf(sheet).draw();
    }

    private byte[] draw() {
        ReportSheet.Correction correction = sheet.correction();
        String version = correction == null ? null : words.say("report.version", "number", correction.version());
        Head.draw(flow, sheet.from(), words.say("report.title"), version);
        facts();
        correction();
        new ReadingsTable(flow, sheet.readings()).draw();
        new FindingBoxes(flow, sheet.findings()).draw();
        done();
        byYou();
        cautions();
        if (sheet.year() != null) {
            flow.section(words.say("report.year"), YearBandPdf.height(sheet.year()));
            YearBandPdf.draw(flow, sheet.year());
        }
        received();
        return flow.bytes(
                words.language(),
                words.say("report.title") + " " + figures.day(sheet.day()),
                words.say("caution.foot"));
    }

    private void facts() {
        float top = flow.y();
        String times = sheet.arrived() == null || sheet.left() == null
                ? ""
                : ", "
                        + words.say(
                                "report.times",
                                Map.of("from", figures.time(sheet.arrived()), "until", figures.time(sheet.left())));
        List<String> home = new ArrayList<>(
                sheet.home().isEmpty()
                        ? List.of()
                        : sheet.home().subList(1, sheet.home().size()));
        home.add(sheet.customer());
        new FactColumns()
                .column(180)
                .fact(
                        words.say("report.home"),
                        sheet.home().isEmpty() ? null : sheet.home().getFirst(),
                        home)
                .column(Flow.WIDTH - 180 - 165)
                .fact(
                        words.say("report.visit"),
                        null,
                        List.of(figures.day(sheet.day()) + times, sheet.technician() + ", " + sheet.about()))
                .draw(flow);
        StampMark.draw(
                flow.page(),
                words,
                Flow.RIGHT - 78,
                top + 30,
                words.say("report.closed") + " " + figures.day(sheet.day()));
        flow.to(Math.max(flow.y(), top + 48));
    }

    private void correction() {
        ReportSheet.Correction correction = sheet.correction();
        if (correction == null) {
            return;
        }
        flow.down(8);
        flow.paragraph(
                Typeface.BOLD,
                Type.TEXT,
                Type.TEXT_LINE,
                Ink.INK,
                Flow.LEFT,
                Flow.WIDTH,
                words.say(
                        "report.correction",
                        Map.of(
                                "number", correction.version(),
                                "day", figures.day(correction.day()),
                                "by", correction.by(),
                                "why", correction.why())));
    }

    private void done() {
        flow.section(words.say("report.done"), 20);
        if (sheet.done().isEmpty()) {
            text(words.say("report.nothing-done"));
        }
        for (ReportSheet.Done done : sheet.done()) {
            flow.down(3);
            RunIn.draw(flow, done.equipment(), String.join(" · ", done.tasks()));
        }
        for (ReportSheet.NotDone not : sheet.notDone()) {
            flow.down(3);
            String where = not.equipment() == null ? "" : not.equipment() + ", ";
            RunIn.draw(flow, words.say("report.not-done"), where + not.task() + ". " + not.why());
        }
        if (!sheet.parts().isEmpty()) {
            flow.down(3);
            List<String> parts = sheet.parts().stream()
                    .map(part -> part.quantity() + "\u00a0× " + part.name())
                    .toList();
            RunIn.draw(flow, words.say("report.parts"), String.join(", ", parts));
        }
        if (sheet.note() != null && !sheet.note().isBlank()) {
            flow.down(6);
            text(sheet.note());
        }
    }

    private void byYou() {
        flow.section(words.say("report.by-you"), 20);
        if (sheet.byYou().isEmpty()) {
            text(words.say("report.nothing-by-you"));
        }
        for (ReportSheet.ByYou task : sheet.byYou()) {
            String where = task.equipment() == null ? "" : " (" + task.equipment() + ")";
            List<String> lines = Lines.wrap(Typeface.REGULAR, Type.TEXT, Flow.WIDTH - 112, task.task() + where);
            flow.need(lines.size() * Type.TEXT_LINE + 3);
            float base = flow.y() + Type.TEXT_LINE - 1;
            flow.page()
                    .text(
                            Typeface.BOLD,
                            Type.TEXT,
                            Ink.INK,
                            Flow.LEFT,
                            base,
                            words.say("report.by-day", "day", figures.day(task.until())));
            flow.lines(Typeface.REGULAR, Type.TEXT, Type.TEXT_LINE, Ink.INK, Flow.LEFT + 112, base, lines);
            flow.down(lines.size() * Type.TEXT_LINE + 2);
        }
        if (sheet.nextVisit() != null) {
            flow.down(3);
            RunIn.draw(flow, words.say("report.next-visit"), sheet.nextVisit());
        }
    }

    private void cautions() {
        flow.section(words.say("caution.title"), 40);
        flow.down(2);
        small(words.say("caution.chemicals"));
        for (String caution : sheet.cautions()) {
            flow.down(2);
            small(words.knows("caution." + caution) ? words.say("caution." + caution) : caution);
        }
        flow.down(2);
        small(words.say("caution.always"));
    }

    private void received() {
        flow.need(42);
        flow.down(26);
        Canvas page = flow.page();
        float half = Flow.WIDTH / 2;
        page.line(Ink.INK, 0.75f, Flow.LEFT, flow.y(), Flow.LEFT + half - 20, flow.y());
        page.line(Ink.INK, 0.75f, Flow.LEFT + half, flow.y(), Flow.RIGHT, flow.y());
        ReportSheet.Received received = sheet.received();
        String at = received.at() == null ? "" : ", " + figures.time(received.at());
        String who = received.by() != null
                ? words.say("report.received", "name", received.by()) + at
                : words.say("report.nobody", "why", received.nobodyWhy() == null ? "" : received.nobodyWhy());
        String technician = sheet.tickets() == null || sheet.tickets().isBlank()
                ? sheet.technician()
                : words.say("report.tickets", Map.of("name", sheet.technician(), "tickets", sheet.tickets()));
        float base = flow.y() + 12;
        int lines = 0;
        lines = Math.max(lines, signed(who, Flow.LEFT, half - 20, base));
        lines = Math.max(lines, signed(technician, Flow.LEFT + half, half, base));
        flow.down(lines * Type.SMALL_LINE + 4);
    }

    private int signed(String text, float x, float room, float base) {
        List<String> lines = Lines.wrap(Typeface.REGULAR, Type.SMALL, room, text);
        flow.lines(Typeface.REGULAR, Type.SMALL, Type.SMALL_LINE, Ink.INK, x, base, lines);
        return lines.size();
    }

    private void text(String text) {
        flow.paragraph(Typeface.REGULAR, Type.TEXT, Type.TEXT_LINE, Ink.INK, Flow.LEFT, Flow.WIDTH, text);
    }

    private void small(String text) {
        flow.paragraph(Typeface.REGULAR, Type.SMALL, Type.SMALL_LINE, Ink.INK, Flow.LEFT, Flow.WIDTH, text);
    }
}
