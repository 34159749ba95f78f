package changeover.web.session;

import changeover.billing.documents.band.DayWords;
import changeover.contracts.customers.HomesShut;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Wording;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;

/** When a home is shut, now or later, in a sentence for whoever plans a visit or makes one. */
@ApplicationScoped
public class ShutInWords {

    @Inject
    HomesShut shut;

    @Inject
    Today today;

    /** What is over is not said. */
    public List<String> of(UUID homeId, Locale locale) {
        return shut.of(homeId).stream()
                .filter(one -> !one.isOver(today.day()))
                .map(one -> sentence(one, locale))
                .toList();
    }

    /** Of homes that are shut on a day, by home. */
    public Map<UUID, String> on(Collection<UUID> homes, LocalDate day, Locale locale) {
        return shut.on(homes, day).entrySet().stream()
                .collect(Collectors.toMap(Map.Entry::getKey, one -> sentence(one.getValue(), locale)));
    }

    public static String sentence(HomesShut.Shut one, Locale locale) {
        DayWords in = DayWords.of(locale);
        String from = in.full(one.from());
        LocalDate until = one.until();
        String first = until == null
                ? new Wording(
                                "Shut from " + from + ", nobody knows until when",
                                "Fermée dès le " + from + ", fin inconnue")
                        .in(locale)
                : new Wording(
                                "Shut from " + from + " to " + in.full(until.minusDays(1)),
                                "Fermée du " + from + " au " + in.full(until.minusDays(1)))
                        .in(locale);
        String heat = one.heatOff() ? new Wording(", heat off", ", chauffage coupé").in(locale) : "";
        String water = one.waterDrained() ? new Wording(", water drained", ", eau vidangée").in(locale) : "";
        String note = one.note();
        return first + heat + water + "." + (note == null ? "" : " " + note);
    }
}
