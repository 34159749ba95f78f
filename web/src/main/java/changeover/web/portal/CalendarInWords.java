package changeover.web.portal;

import changeover.scheduling.dayplan.CalendarEntry;
import changeover.web.session.Bundles;
import jakarta.enterprise.context.ApplicationScoped;
import java.net.URI;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** What a calendar says of a visit, to the technician who drives there and to the household that waits. */
@ApplicationScoped
class CalendarInWords {

    CalendarWords of(Locale locale) {
        return Bundles.of(CalendarWords.class, locale);
    }

    /** Its page opens only for who is signed in. */
    CalendarFile.Entry forTechnician(CalendarEntry told, Locale locale, URI base) {
        CalendarWords words = of(locale);
        String minutes = words.minutes(told.minutes());
        return entry(
                told,
                line(told),
                told.goesAlong() && !told.cancelled() ? minutes + "\n" + words.goes_along(told.technician()) : minutes,
                told.cancelled() ? null : base.resolve("field/visits/" + told.visitId()));
    }

    CalendarFile.Entry forHousehold(CalendarEntry told, Locale locale, String business, @Nullable String phone) {
        CalendarWords words = of(locale);
        String who = words.comes(told.technician());
        return entry(told, words.visit_of(business), phone == null ? who : who + "\n" + words.ring(phone), null);
    }

    private static CalendarFile.Entry entry(CalendarEntry told, String summary, String description, @Nullable URI url) {
        return new CalendarFile.Entry(
                told.visitId(),
                told.sequence(),
                told.changedAt(),
                told.day(),
                told.starts(),
                told.ends(),
                told.cancelled(),
                told.certain(),
                summary,
                line(told) + ", " + told.city(),
                description,
                url);
    }

    private static String line(CalendarEntry told) {
        return told.unitLabel() == null ? told.street() : told.street() + ", " + told.unitLabel();
    }
}
