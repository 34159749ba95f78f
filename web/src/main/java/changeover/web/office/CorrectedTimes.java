package changeover.web.office;

import changeover.contracts.words.Refusal;
import changeover.scheduling.closeout.DaySheet;
import changeover.scheduling.closeout.Operation;
import changeover.web.session.Typed;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * When they came and left, as a correction says it: the day on which they came, and two hours; an hour of leaving before that of
 * coming is one of the next day.
 *
 * @param arrived as it stands; null where nobody said
 * @param day of the closure, where nobody said when they came
 */
record CorrectedTimes(
        List<DaySheet.Said> said,
        @Nullable Instant arrived,
        @Nullable Instant left,
        LocalDate day,
        ZoneId zone) {

    /** Who leaves before they came did not stay until the next evening: it is a slip of the hand. */
    private static final Duration LONGEST_STAY = Duration.ofHours(16);

    private static final List<String> FIELDS = List.of("cameOn", "arrived", "left");

    void known(Map<String, String> known) {
        Instant came = arrived == null ? left : arrived;
        known.put("cameOn", (came == null ? day : came.atZone(zone).toLocalDate()).toString());
        known.put("arrived", hour(arrived));
        known.put("left", hour(left));
    }

    private String hour(@Nullable Instant at) {
        return at == null
                ? ""
                : at.atZone(zone).toLocalTime().truncatedTo(ChronoUnit.MINUTES).toString();
    }

    /** Says both anew where one of them is otherwise; a field that is left empty is nobody's hour. */
    void read(Typed typed, Map<String, String> known, CorrectionTold told, Instant now) {
        boolean asked = typed.asTyped().keySet().containsAll(FIELDS);
        if (!asked || FIELDS.stream().noneMatch(field -> AmendmentForm.otherwise(typed, known, field))) {
            return;
        }
        LocalDate cameOn = typed.day("cameOn");
        boolean sameDay = !AmendmentForm.otherwise(typed, known, "cameOn");
        Instant came = typed.ticked("arrived")
                ? sameDay && !AmendmentForm.otherwise(typed, known, "arrived")
                        ? arrived
                        : at(cameOn, typed.time("arrived"))
                : null;
        Instant went = typed.ticked("left") ? left(cameOn, typed.time("left"), came) : null;
        if (came != null && came.isAfter(now)) {
            typed.refuse(Refusal.of("closeout.paper-to-come").at("arrived"));
        } else if (went != null && came != null && Duration.between(came, went).compareTo(LONGEST_STAY) > 0) {
            typed.refuse(Refusal.of("closeout.paper-left-before").at("left"));
        } else if (went != null && went.isAfter(now)) {
            typed.refuse(Refusal.of("closeout.paper-to-come").at("left"));
        }
        say("arrive", new Operation.Arrive(), came, told);
        say("leave", new Operation.Leave(), went, told);
    }

    private Instant at(LocalDate on, LocalTime hour) {
        return on.atTime(hour).atZone(zone).toInstant();
    }

    /** In the hour that the clocks repeat, the one after they came. */
    private Instant left(LocalDate cameOn, LocalTime hour, @Nullable Instant came) {
        if (came == null) {
            return at(cameOn, hour);
        }
        ZonedDateTime went = cameOn.atTime(hour).atZone(zone);
        if (went.toInstant().isBefore(came)) {
            went = went.withLaterOffsetAtOverlap();
        }
        return went.toInstant().isBefore(came.truncatedTo(ChronoUnit.MINUTES))
                ? at(cameOn.plusDays(1), hour)
                : went.toInstant();
    }

    private void say(String kind, Operation operation, @Nullable Instant hour, CorrectionTold told) {
        String field = kind.equals("arrive") ? "arrived" : "left";
        standing(kind).ifPresent(earlier -> told.add(new Operation.TakeBack(earlier.id()), _ -> field));
        if (hour != null) {
            told.add(operation, hour, _ -> field);
        }
    }

    private Optional<DaySheet.Said> standing(String kind) {
        return said.stream().filter(one -> one.kind().equals(kind)).findFirst();
    }
}
