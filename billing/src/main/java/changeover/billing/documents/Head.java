package changeover.billing.documents;

import changeover.contracts.pictures.Picture;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The head of a paper: the sender at the left, what it is and its number at the right, an ink rule under both. */
final class Head {

    private static final float TITLE_ROOM = 210;
    private static final float LOGO_HEIGHT = 44;
    private static final float LOGO_WIDTH = 96;

    private Head() {}

    static void draw(Flow flow, Letterhead from, String title, @Nullable String number) {
        Canvas page = flow.page();
        float top = flow.y();
        float left = Flow.LEFT;
        Picture logo = from.logo();
        if (logo != null) {
            float scale = Math.min(LOGO_WIDTH / logo.width(), LOGO_HEIGHT / logo.height());
            page.picture(flow.file().picture(logo), left, top, logo.width() * scale, logo.height() * scale);
            left += logo.width() * scale + 12;
        }
        String called = Letters.plain(title);
        float titleWidth = Math.min(TITLE_ROOM, Typeface.HEADING.width(called, Type.TITLE));
        float numberWidth =
                number == null ? 0 : Math.min(TITLE_ROOM, Typeface.BOLD.width(Letters.plain(number), 11.25f));
        float room = Flow.RIGHT - Math.max(titleWidth, numberWidth) - 18 - left;
        float base = top + 14;
        for (String line : Lines.wrap(Typeface.HEADING, Type.NAME, room, from.name())) {
            page.text(Typeface.HEADING, Type.NAME, Ink.INK, left, base, line);
            base += 20;
        }
        base -= 6;
        for (String line : senderLines(from, flow.words())) {
            for (String wrapped : Lines.wrap(Typeface.REGULAR, Type.SMALL, room, line)) {
                page.text(Typeface.REGULAR, Type.SMALL, Ink.INK, left, base, wrapped);
                base += Type.SMALL_LINE;
            }
        }
        page.textRight(Typeface.HEADING, Type.TITLE, Ink.INK, Flow.RIGHT, top + 17, TITLE_ROOM, title);
        if (number != null) {
            page.textRight(Typeface.BOLD, 11.25f, Ink.INK, Flow.RIGHT, top + 34, TITLE_ROOM, number);
        }
        float foot = Math.max(base - 2, top + (logo == null ? 40 : LOGO_HEIGHT + 6));
        page.line(Ink.INK, 1.5f, Flow.LEFT, foot, Flow.RIGHT, foot);
        flow.to(foot);
    }

    private static List<String> senderLines(Letterhead from, Words words) {
        String address = String.join(", ", from.address());
        String phone = from.phone() == null ? "" : from.phone();
        String email = from.email() == null ? "" : from.email();
        String reach = phone + (phone.isBlank() || email.isBlank() ? "" : ", ") + email;
        String licence = from.licenceLine(words);
        return java.util.stream.Stream.of(address, reach, licence == null ? "" : licence)
                .filter(line -> !line.isBlank())
                .toList();
    }
}
