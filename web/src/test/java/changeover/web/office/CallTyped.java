package changeover.web.office;

import static changeover.web.AShop.post;

import changeover.web.ALivedInHome;
import changeover.web.AShop;
import changeover.web.AShop.Shop;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** A call as somebody types it, for the tests of its pages. */
class CallTyped {

    static final LocalDate TODAY = LocalDate.now(ZoneId.of("America/Toronto"));

    @Inject
    AShop shops;

    @Inject
    ALivedInHome homes;

    /** What somebody types while the caller talks; the home is new. */
    static Map<String, Object> typed() {
        var fields = new HashMap<String, Object>();
        fields.put("made", UUID.randomUUID().toString());
        fields.put("caller", "Mara Quill");
        fields.put("phone", "555-0142");
        fields.put("day", TODAY.toString());
        fields.put("time", "00:00");
        fields.put("home", "");
        fields.put("street", "9 Tannery Row");
        fields.put("city", "Port Ambrose");
        fields.put("postal", "K0A 1A0");
        fields.put("language", "en");
        fields.put("trouble", "no_heat");
        fields.put("heat", "no");
        fields.put("words", "The furnace clicks and stops");
        fields.put("risks", List.of("infant"));
        fields.put("cost", "145,00");
        fields.put("toldWords", "the trip and the first hour");
        return fields;
    }

    static String take(Shop shop, Map<String, Object> fields) {
        return post(shop.office(), shop.at("calls"), fields)
                .statusCode(303)
                .extract()
                .header("Location")
                .replaceFirst("^https?://[^/]*", "");
    }

    /** The call becomes a visit. @return where it is */
    static String visit(Shop shop, String call) {
        return post(
                        shop.office(),
                        call + "/outcome",
                        Map.of(
                                "how",
                                "visit",
                                "why",
                                "Somebody has to look",
                                "minutes",
                                "60",
                                "last",
                                TODAY.toString()))
                .statusCode(303)
                .extract()
                .header("Location")
                .replaceFirst("^https?://[^/]*", "")
                .replaceFirst("\\?.*", "");
    }
}
