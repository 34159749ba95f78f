package changeover.billing.notices;

import changeover.billing.documents.band.DayWords;
import changeover.contracts.tenants.Ids;
import changeover.contracts.tenants.Locales;
import changeover.contracts.tenants.ManyRows;
import changeover.scheduling.dayplan.Minutes;
import changeover.scheduling.dayplan.change.WholeDay;
import changeover.scheduling.dayplan.change.WholeDayHeard;
import changeover.scheduling.dayplan.change.WholeDays;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;

/** A whole day moves, and each customer who was told an hour of it gets one message in their own language. */
@ApplicationScoped
public class WholeDayMoves {

    /** The kind of message. */
    static final String KIND = "moved_day";

    @Inject
    WholeDays days;

    @Inject
    WholeDayHeard heard;

    @Inject
    LettersToCustomers letters;

    @Inject
    AgroalDataSource database;

    /** @param shown the number of what was shown */
    public WholeDays.Done move(WholeDays.Asked asked, int shown, WholeDays.Reason reason) {
        WholeDays.Done done = days.move(asked, shown, reason);
        Map<UUID, List<WholeDay.Goes>> told = done.proposed().day().visits().stream()
                .filter(one -> one.visit().told() && one.visit().customer() != null)
                .collect(Collectors.groupingBy(
                        one -> Objects.requireNonNull(one.visit().customer()),
                        LinkedHashMap::new,
                        Collectors.toList()));
        Set<UUID> mailed = letters.readers(told.keySet()).entrySet().stream()
                .filter(reader -> reader.getValue().hasMail())
                .map(Map.Entry::getKey)
                .collect(Collectors.toSet());
        told.keySet().retainAll(mailed);
        write(done, told);
        heard.written(done, mailed);
        return done;
    }

    private void write(WholeDays.Done done, Map<UUID, List<WholeDay.Goes>> told) {
        var rows = ManyRows.into("whole_day_letter", "id uuid, whole_day_id uuid, customer_id uuid");
        Map<LettersToCustomers.Addressed, Function<String, FreeLetter>> words = new LinkedHashMap<>();
        told.forEach((customer, visits) -> {
            UUID id = Ids.next();
            rows.add(id, done.id(), customer);
            words.put(
                    new LettersToCustomers.Addressed(customer, List.of()),
                    language -> letter(language, id, done, visits));
        });
        try (Connection connection = database.getConnection()) {
            rows.store(connection);
        } catch (SQLException cause) {
            throw new IllegalStateException("the messages could not be written down", cause);
        }
        letters.write(words);
    }

    static FreeLetter letter(String language, UUID id, WholeDays.Done done, List<WholeDay.Goes> visits) {
        DayWords in = DayWords.of(Locales.of(language));
        String day = in.withWeekday(done.day());
        String cause =
                MailWords.say(language, "moved.because." + done.reason().cause().code(), Map.of());
        String lines = visits.stream().map(one -> line(language, in, one)).collect(Collectors.joining("\n"));
        return new FreeLetter(
                KIND,
                id,
                MailWords.say(language, "moved.subject", Map.of("day", in.plain(done.day()))),
                MailWords.say(language, "moved.body", Map.of("day", day, "cause", cause))
                        .replace("{visits}", lines));
    }

    private static String line(String language, DayWords in, WholeDay.Goes one) {
        String home = OneLine.of(one.visit().address());
        LocalDate day = one.day();
        return day == null
                ? MailWords.say(language, "moved.no-day", Map.of("home", home))
                : MailWords.say(
                        language,
                        "moved.line",
                        Map.of("home", home, "day", in.withWeekday(day), "hour", hour(in, Minutes.time(one.starts()))));
    }

    /** "10:30", « 10 h 30 ». */
    private static String hour(DayWords in, LocalTime time) {
        if (!in.french()) {
            return time.toString();
        }
        String minutes = time.getMinute() == 0 ? "" : "\u00a0" + time.toString().substring(3);
        return time.getHour() + "\u00a0h" + minutes;
    }
}
