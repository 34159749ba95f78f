package changeover.web.office;

import changeover.scheduling.dayplan.Need;
import changeover.web.session.Bundles;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** What is asked of whoever is sent, as one line. */
final class NeedInWords {

    private NeedInWords() {}

    static String of(Need need, Locale locale) {
        NeedWords words = Bundles.of(NeedWords.class, locale);
        ShopWords shop = Bundles.of(ShopWords.class, locale);
        List<String> said = new ArrayList<>();
        if (need.people() == 2) {
            said.add(words.two());
        }
        need.tickets().stream().sorted().map(kind -> ticket(kind, shop)).forEach(said::add);
        @Nullable LocalTime earliest = need.earliest();
        @Nullable LocalTime latest = need.latest();
        if (earliest != null) {
            said.add(words.earliest(earliest.toString()));
        }
        if (latest != null) {
            said.add(words.latest(latest.toString()));
        }
        return said.isEmpty() ? words.nothing() : String.join(", ", said);
    }

    static String ticket(String kind, Locale locale) {
        return ticket(kind, Bundles.of(ShopWords.class, locale));
    }

    private static String ticket(String kind, ShopWords shop) {
        return switch (kind) {
            case "gas" -> shop.gas();
            case "refrigerant" -> shop.refrigerant();
            default -> shop.electrical();
        };
    }
}
