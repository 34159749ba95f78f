package changeover.web.office;

import changeover.billing.pricing.ItemKind;
import changeover.billing.pricing.PriceBook;
import changeover.billing.pricing.TravelZone;
import changeover.billing.pricing.Zones;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.words.Wording;
import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.Parts;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What everything that has a price is called. */
@ApplicationScoped
class PriceNames {

    /** @param value item kind and code, {@code part:FIL-1} */
    public record Choice(String value, String words) {}

    private static final Map<String, Wording> FIXED = fixed();

    @Inject
    Parts parts;

    @Inject
    Zones zones;

    @Inject
    OwnCatalogue trade;

    static String key(ItemKind kind, String code) {
        return kind.code() + ":" + code;
    }

    /** What may be priced on a day: labour, trips, the zones of that day, and the parts that are carried. */
    List<Choice> choices(LocalDate day, Locale locale) {
        var choices = new ArrayList<Choice>();
        FIXED.forEach((key, words) -> choices.add(new Choice(key, words.in(locale))));
        zones.all().on(day).forEach(zone -> choices.add(zone(zone, locale)));
        parts.all().forEach(part -> choices.add(part(part, locale)));
        return choices;
    }

    /** Names by {@link #key}, those of zones that are no more too. */
    Map<String, String> names(Locale locale) {
        var names = new HashMap<String, String>();
        FIXED.forEach((key, words) -> names.put(key, words.in(locale)));
        zones.all()
                .zones()
                .forEach(zone -> names.put(
                        key(ItemKind.TRAVEL, zone.code()), zone(zone, locale).words()));
        parts.all()
                .forEach(part -> names.put(
                        key(ItemKind.PART, part.code()), part(part, locale).words()));
        return names;
    }

    /** The kinds of part that the business carries, with their names. */
    List<Choice> kinds(Locale locale) {
        return trade.catalogue().parts().stream()
                .map(kind -> new Choice(kind.code(), kind.wording().in(locale)))
                .toList();
    }

    private static Choice zone(TravelZone zone, Locale locale) {
        boolean french = locale.getLanguage().equals("fr");
        return new Choice(
                key(ItemKind.TRAVEL, zone.code()),
                french
                        ? "Un déplacement, zone " + zone.name().fr()
                        : "A trip, zone " + zone.name().en());
    }

    private static Choice part(KnownPart part, Locale locale) {
        return new Choice(key(ItemKind.PART, part.code()), part.name().in(locale) + " (" + part.code() + ")");
    }

    private static Map<String, Wording> fixed() {
        var words = new LinkedHashMap<String, Wording>();
        words.put(key(ItemKind.LABOUR, PriceBook.HOUR), new Wording("An hour of labour", "Une heure de travail"));
        words.put(
                key(ItemKind.LABOUR, PriceBook.AFTER_HOURS),
                new Wording(
                        "An hour of labour on a call outside working hours",
                        "Une heure de travail hors des heures ouvrables, sur appel"));
        words.put(
                key(ItemKind.LABOUR, PriceBook.WEEKEND),
                new Wording("The same on a weekend, where it differs", "La même en fin de semaine, si elle diffère"));
        words.put(
                key(ItemKind.LABOUR, PriceBook.HOLIDAY),
                new Wording("The same on a holiday, where it differs", "La même un jour férié, si elle diffère"));
        words.put(key(ItemKind.TRAVEL, PriceBook.VISIT), new Wording("A trip", "Un déplacement"));
        words.put(
                key(ItemKind.TRAVEL, PriceBook.NO_ACCESS),
                new Wording("A trip to a closed door", "Un déplacement devant une porte close"));
        return words;
    }
}
