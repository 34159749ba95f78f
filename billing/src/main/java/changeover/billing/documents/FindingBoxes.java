package changeover.billing.documents;

import changeover.contracts.catalogue.FindingLevel;
import changeover.contracts.pictures.Picture;
import java.util.List;
import java.util.Map;

/** Findings, each in a box whose edge, shape and word say how much it matters, with its photos and what happens next. */
final class FindingBoxes {

    private static final float PHOTO = 108;
    private static final float PHOTO_HEIGHT = 82;
    private static final float GAP = 9;
    private static final float ICON = 34;

    private final Flow flow;
    private final Words words;
    private final List<ReportSheet.Finding> findings;

    FindingBoxes(Flow flow, List<ReportSheet.Finding> findings) {
        this.flow = flow;
        this.words = flow.words();
        this.findings = findings;
    }

    void draw() {
        flow.section(words.say("report.findings"), 60);
        if (findings.isEmpty()) {
            flow.paragraph(
                    Typeface.REGULAR,
                    Type.TEXT,
                    Type.TEXT_LINE,
                    Ink.INK,
                    Flow.LEFT,
                    Flow.WIDTH,
                    words.say("report.no-findings"));
        }
        for (int number = 1; number <= findings.size(); number++) {
            box(number, findings.get(number - 1));
        }
    }

    private void box(int number, ReportSheet.Finding finding) {
        boolean photo = finding.photos().size() == 1;
        float width = photo ? Flow.WIDTH - PHOTO - 12 : Flow.WIDTH;
        float room = width - ICON - 12;
        String level = finding.level().wording().in(words.language());
        String heading = level + " · " + number + (finding.equipment() == null ? "" : ", " + finding.equipment());
        List<String> head = Lines.wrap(Typeface.BOLD, Type.TEXT, room, heading);
        List<String> text = Lines.wrap(Typeface.REGULAR, Type.TEXT, room, text(finding));
        boolean block = finding.level() == FindingLevel.DO_NOT_USE;
        float stripe = block ? 8 : 0;
        float height = Math.max(36, stripe + 9 + (head.size() + text.size()) * Type.TEXT_LINE + 5);
        float need = Math.max(height, photo ? shown(finding.photos().getFirst().picture()) + 14 : 0) + GAP;
        flow.need(need);
        float top = flow.y() + 3;
        LevelMark.frame(flow.page(), finding.level(), Flow.LEFT, top, width, height);
        LevelMark.icon(flow.page(), finding.level(), Flow.LEFT + 19, top + stripe + 17);
        Ink ink = block ? Ink.WHITE : Ink.INK;
        float base = top + stripe + 15;
        base = flow.lines(Typeface.BOLD, Type.TEXT, Type.TEXT_LINE, ink, Flow.LEFT + ICON, base, head);
        flow.lines(Typeface.REGULAR, Type.TEXT, Type.TEXT_LINE, ink, Flow.LEFT + ICON, base, text);
        if (photo) {
            photo(finding.photos().getFirst(), Flow.RIGHT - PHOTO, top, String.valueOf(number));
        }
        flow.to(top + need - 3);
        if (finding.photos().size() > 1) {
            rows(finding.photos(), number);
        }
    }

    private static String text(ReportSheet.Finding finding) {
        StringBuilder text = new StringBuilder(finding.text());
        if (finding.next() != null && !finding.next().isBlank()) {
            text.append('\n').append(finding.next());
        }
        if (finding.answer() != null && !finding.answer().isBlank()) {
            text.append('\n').append(finding.answer());
        }
        return text.toString();
    }

    /** Several photos stand under the box, four to a row. */
    private void rows(List<ReportSheet.Photo> photos, int number) {
        float step = (Flow.WIDTH - PHOTO) / 3;
        for (int at = 0; at < photos.size(); at++) {
            int column = at % 4;
            if (column == 0) {
                flow.need(PHOTO_HEIGHT + 18);
            }
            photo(photos.get(at), Flow.LEFT + column * step, flow.y() + 2, number + "." + (at + 1));
            if (column == 3 || at == photos.size() - 1) {
                flow.down(PHOTO_HEIGHT + 20);
            }
        }
    }

    /** The height at which a photo is shown. */
    private static float shown(Picture picture) {
        return picture.height() * Math.min(PHOTO / picture.width(), PHOTO_HEIGHT / picture.height());
    }

    private void photo(ReportSheet.Photo photo, float x, float y, String number) {
        Picture picture = photo.picture();
        float scale = Math.min(PHOTO / picture.width(), PHOTO_HEIGHT / picture.height());
        float width = picture.width() * scale;
        float height = picture.height() * scale;
        flow.page().picture(flow.file().picture(picture), x, y, width, height);
        flow.page().box(Ink.LINE, 0.6f, x, y, width, height);
        String caption = photo.caption() == null
                ? words.say("report.photo", "number", number)
                : words.say("report.photo-of", Map.of("number", number, "caption", photo.caption()));
        flow.page()
                .text(
                        Typeface.REGULAR,
                        Type.SMALL,
                        Ink.QUIET,
                        x,
                        y + height + 11,
                        Flow.clip(caption, Typeface.REGULAR, Type.SMALL, PHOTO));
    }
}
