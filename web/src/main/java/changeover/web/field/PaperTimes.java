package changeover.web.field;

import changeover.contracts.words.Refusal;
import changeover.web.session.Typed;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** When somebody came and left, as a sheet of paper says of the visit's day; a close-out typed later keeps that day. */
record PaperTimes(Instant arrived, Instant left) {

    /** Empty where the form says neither; what is wrong is kept in {@code typed}. */
    static Optional<PaperTimes> of(Typed typed, @Nullable LocalDate day, ZoneId zone, Instant now) {
        boolean arrived = typed.ticked("arrived");
        boolean left = typed.ticked("left");
        if (day == null || !arrived && !left) {
            return Optional.empty();
        }
        if (!arrived || !left) {
            typed.refuse(Refusal.of("closeout.paper-both-times").at(arrived ? "left" : "arrived"));
            return Optional.empty();
        }
        LocalTime came = typed.time("arrived");
        LocalTime went = typed.time("left");
        var times = new PaperTimes(
                day.atTime(came).atZone(zone).toInstant(),
                day.atTime(went).atZone(zone).toInstant());
        if (went.isBefore(came)) {
            typed.refuse(Refusal.of("closeout.paper-left-before").at("left"));
        } else if (times.left().isAfter(now)) {
            typed.refuse(Refusal.of("closeout.paper-to-come").at("left"));
        }
        return Optional.of(times);
    }
}
