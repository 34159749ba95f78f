package changeover.web.portal;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.regex.Pattern;
import net.fortuna.ical4j.data.CalendarOutputter;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.ParameterList;
import net.fortuna.ical4j.model.TimeZoneRegistry;
import net.fortuna.ical4j.model.TimeZoneRegistryFactory;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.parameter.Value;
import net.fortuna.ical4j.model.property.Description;
import net.fortuna.ical4j.model.property.DtEnd;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.DtStart;
import net.fortuna.ical4j.model.property.LastModified;
import net.fortuna.ical4j.model.property.Location;
import net.fortuna.ical4j.model.property.Name;
import net.fortuna.ical4j.model.property.ProdId;
import net.fortuna.ical4j.model.property.RefreshInterval;
import net.fortuna.ical4j.model.property.Sequence;
import net.fortuna.ical4j.model.property.Status;
import net.fortuna.ical4j.model.property.Summary;
import net.fortuna.ical4j.model.property.Uid;
import net.fortuna.ical4j.model.property.Url;
import net.fortuna.ical4j.model.property.immutable.ImmutableCalScale;
import net.fortuna.ical4j.model.property.immutable.ImmutableVersion;
import net.fortuna.ical4j.validate.ValidationException;
import org.jspecify.annotations.Nullable;

/**
 * Visits as a calendar reads them: hours in the business's own time with the zone's rules beside them, so that the hour is
 * right on both days of the year on which clocks change.
 *
 * @see <a href="https://www.rfc-editor.org/rfc/rfc5545">RFC 5545</a>; NAME and REFRESH-INTERVAL are RFC 7986's
 */
final class CalendarFile {

    private static final ProdId MADE_BY = new ProdId("-//Changeover//Visits//EN");
    private static final Duration AGAIN = Duration.ofHours(1);

    /** Reading the zones' data is slow; they never change while the program runs. */
    private static final TimeZoneRegistry ZONES =
            TimeZoneRegistryFactory.getInstance().createRegistry();

    private static final Pattern FOLD = Pattern.compile("\r\n[ \t]");
    private static final int OCTETS = 75;
    private static final byte[] END = {'\r', '\n'};
    private static final byte[] NEXT = {'\r', '\n', ' '};

    private CalendarFile() {}

    /**
     * One visit.
     *
     * @param certain whether the hour is confirmed; one that is proposed is tentative
     * @param url where its page is; null where the reader has none
     */
    record Entry(
            UUID uid,
            int sequence,
            Instant changedAt,
            LocalDate day,
            LocalTime starts,
            LocalTime ends,
            boolean cancelled,
            boolean certain,
            String summary,
            String place,
            String description,
            @Nullable URI url) {}

    /** UTF-8; the same entries give the same bytes. */
    static byte[] of(String name, ZoneId zone, List<Entry> entries) {
        var calendar = new Calendar();
        calendar.add(MADE_BY);
        calendar.add(ImmutableVersion.VERSION_2_0);
        calendar.add(ImmutableCalScale.GREGORIAN);
        calendar.add(new Name(name));
        calendar.add(new RefreshInterval(new ParameterList(List.of(Value.DURATION)), AGAIN));
        calendar.add(Objects.requireNonNull(ZONES.getTimeZone(zone.getId()), zone.getId())
                .getVTimeZone());
        entries.forEach(entry -> calendar.add(event(entry, zone)));
        try {
            var text = new StringWriter();
            new CalendarOutputter().output(calendar, text);
            return folded(text.toString());
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        } catch (ValidationException cause) {
            throw new IllegalStateException("the calendar does not hold to RFC 5545", cause);
        }
    }

    private static VEvent event(Entry entry, ZoneId zone) {
        var event = new VEvent(false);
        event.add(new Uid(entry.uid().toString()));
        event.add(new DtStamp(entry.changedAt()));
        event.add(new LastModified(entry.changedAt()));
        event.add(new Sequence(entry.sequence()));
        event.add(new DtStart<>(ZonedDateTime.of(entry.day(), entry.starts(), zone)));
        event.add(new DtEnd<>(ZonedDateTime.of(entry.day(), entry.ends(), zone)));
        event.add(new Summary(entry.summary()));
        event.add(new Location(entry.place()));
        event.add(new Description(entry.description()));
        if (entry.url() != null) {
            event.add(new Url(entry.url()));
        }
        event.add(new Status(status(entry)));
        return event;
    }

    private static String status(Entry entry) {
        if (entry.cancelled()) {
            return Status.VALUE_CANCELLED;
        }
        return entry.certain() ? Status.VALUE_CONFIRMED : Status.VALUE_TENTATIVE;
    }

    /** The library folds lines by characters; the standard asks for at most 75 octets, and no character is cut (RFC 5545, 3.1). */
    private static byte[] folded(String text) {
        var file = new ByteArrayOutputStream();
        for (String line : FOLD.matcher(text).replaceAll("").split("\r\n", -1)) {
            if (line.isEmpty()) {
                continue;
            }
            int octets = 0;
            for (int at = 0; at < line.length(); at = line.offsetByCodePoints(at, 1)) {
                byte[] letter = Character.toString(line.codePointAt(at)).getBytes(StandardCharsets.UTF_8);
                if (octets + letter.length > OCTETS) {
                    file.writeBytes(NEXT);
                    octets = 1;
                }
                file.writeBytes(letter);
                octets += letter.length;
            }
            file.writeBytes(END);
        }
        return file.toByteArray();
    }
}
