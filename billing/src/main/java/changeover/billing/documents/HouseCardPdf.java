package changeover.billing.documents;

import java.util.List;

/** The house card on paper: warnings first, how to get in, who is who, the machines as tags, what is open, the year. */
public final class HouseCardPdf {

    private static final float QR = 62;
    private static final float GAP = 10;

    private final CardSheet sheet;
    private final Words words;
    private final Figures figures;
    private final Flow flow;

    private HouseCardPdf(CardSheet sheet) {
        this.sheet = sheet;
        this.words = Words.in(sheet.language());
        this.figures = new Figures(words);
        this.flow = new Flow(words, sheet.business(), words.say("card.title") + ", " + sheet.title());
    }

    /** The paper as PDF/A-3b; one page for most homes. */
    public static byte[] bytes(CardSheet sheet) {
        return new HouseCardPdf(sheet).draw();
    }

    private byte[] draw() {
        head();
        warnings();
        gettingIn();
        units();
        findings();
        visits();
        if (sheet.year() != null) {
            flow.section(words.say("report.year"), YearBandPdf.height(sheet.year()));
            YearBandPdf.draw(flow, sheet.year());
        }
        String printed = words.say("card.printed", "day", figures.day(sheet.printedOn()));
        return flow.bytes(words.language(), words.say("card.title") + " " + sheet.title(), printed);
    }

    private void head() {
        Canvas page = flow.page();
        float top = flow.y();
        String link = sheet.link();
        float room = Flow.WIDTH - (link == null ? 0 : QR + 10);
        float base = top + 19;
        for (String line : Lines.wrap(Typeface.HEADING, Type.TITLE, room, sheet.title())) {
            page.text(Typeface.HEADING, Type.TITLE, Ink.INK, Flow.LEFT, base, line);
            base += 26;
        }
        base -= 9;
        for (String line : sheet.address()) {
            base = flow.lines(
                    Typeface.REGULAR,
                    Type.TEXT,
                    Type.TEXT_LINE,
                    Ink.INK,
                    Flow.LEFT,
                    base,
                    Lines.wrap(Typeface.REGULAR, Type.TEXT, room, line));
        }
        if (link != null) {
            QrMark.draw(page, link, Flow.RIGHT - QR + 4, top - 6, QR);
        }
        float foot = Math.max(base - 4, top + (link == null ? 0 : QR - 8));
        page.line(Ink.INK, 1.5f, Flow.LEFT, foot, Flow.RIGHT, foot);
        flow.to(foot);
    }

    private void warnings() {
        if (sheet.warnings().isEmpty()) {
            return;
        }
        flow.down(8);
        String said = String.join(" · ", sheet.warnings());
        List<String> lines = Lines.wrap(Typeface.BOLD, Type.TEXT, Flow.WIDTH - 24, said);
        float height = 8 + lines.size() * Type.TEXT_LINE + 12;
        flow.need(height);
        LevelMark.hazard(flow.page(), Flow.LEFT, flow.y(), Flow.WIDTH, 8);
        flow.page().box(Ink.INK, 1.2f, Flow.LEFT + 0.6f, flow.y() + 0.6f, Flow.WIDTH - 1.2f, height - 1.2f);
        flow.lines(Typeface.BOLD, Type.TEXT, Type.TEXT_LINE, Ink.INK, Flow.LEFT + 12, flow.y() + 23, lines);
        flow.down(height);
    }

    private void gettingIn() {
        float third = Flow.WIDTH / 3;
        FactColumns columns = new FactColumns().column(third);
        String way = sheet.gettingIn() == null || sheet.gettingIn().isBlank()
                ? words.say("card.no-getting-in")
                : sheet.gettingIn();
        columns.fact(words.say("card.getting-in"), null, List.of(way.split("\\R")));
        if (!sheet.keys().isEmpty()) {
            columns.fact(
                    words.say("card.keys"),
                    null,
                    sheet.keys().stream()
                            .map(key -> key.caption() + words.say("card.colon") + key.value())
                            .toList());
        }
        if (sheet.nextVisit() != null) {
            columns.fact(words.say("report.next-visit"), sheet.nextVisit(), List.of());
        }
        int left = (sheet.people().size() + 1) / 2;
        for (int number = 0; number < sheet.people().size(); number++) {
            if (number == 0 || number == left) {
                columns.column(third);
            }
            CardSheet.Person person = sheet.people().get(number);
            columns.fact(person.parts(), person.name(), person.phone() == null ? List.of() : List.of(person.phone()));
        }
        columns.draw(flow);
        flow.down(6);
    }

    private void units() {
        flow.section(words.say("card.units"), 60);
        if (sheet.toBeRead()) {
            flow.paragraph(
                    Typeface.BOLD,
                    Type.TEXT,
                    Type.TEXT_LINE,
                    Ink.INK,
                    Flow.LEFT,
                    Flow.WIDTH,
                    words.say("card.to-be-read"));
        }
        int columns = sheet.units().size() > 4 ? 3 : 2;
        float width = (Flow.WIDTH - GAP * (columns - 1)) / columns;
        for (int first = 0; first < sheet.units().size(); first += columns) {
            List<CardSheet.Unit> row = sheet.units()
                    .subList(first, Math.min(first + columns, sheet.units().size()));
            float height = 0;
            for (CardSheet.Unit unit : row) {
                height = Math.max(height, UnitTag.height(unit, width));
            }
            flow.need(height + 8);
            for (int at = 0; at < row.size(); at++) {
                UnitTag.draw(
                        flow.page(), words, row.get(at), Flow.LEFT + at * (width + GAP), flow.y() + 4, width, height);
            }
            flow.down(height + 8);
        }
    }

    private void findings() {
        if (sheet.findings().isEmpty()) {
            return;
        }
        flow.section(words.say("card.open"), 30);
        for (CardSheet.OpenFinding finding : sheet.findings()) {
            flow.down(3);
            String level = finding.level().wording().in(words.language());
            String where = finding.equipment() == null ? "" : finding.equipment() + ". ";
            RunIn.draw(flow, level + ", " + figures.day(finding.day()), where + finding.text());
        }
    }

    private void visits() {
        if (sheet.visits().isEmpty()) {
            return;
        }
        flow.section(words.say("card.visits"), 30);
        for (CardSheet.Visit visit : sheet.visits()) {
            flow.down(3);
            RunIn.draw(flow, figures.day(visit.day()), visit.technician() + ". " + visit.words());
        }
    }
}
