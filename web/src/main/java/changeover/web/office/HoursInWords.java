package changeover.web.office;

import changeover.contracts.tenants.Businesses;
import changeover.scheduling.dayplan.Moving;
import changeover.scheduling.dayplan.standing.HourState;
import changeover.scheduling.dayplan.standing.HourStates;
import changeover.scheduling.dayplan.standing.Step;
import changeover.scheduling.dayplan.standing.Steps;
import changeover.web.session.Bundles;
import changeover.web.session.Frame;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** How visits' hours stand and what became of them, a line for each thing that happened. */
@ApplicationScoped
public class HoursInWords {

    /**
     * A visit's hour.
     *
     * @param state proposed, confirmed, under_way and so on, as {@link HourState} names it
     * @param words the same for the reader
     * @param lines first to last
     */
    public record Hour(String state, String words, List<String> lines) {

        public boolean isProposed() {
            return state.equals(HourState.PROPOSED.code());
        }
    }

    @Inject
    HourStates states;

    @Inject
    Steps steps;

    @Inject
    Businesses businesses;

    Hour of(UUID visit, Frame frame) {
        return Objects.requireNonNull(of(List.of(visit), frame).get(visit));
    }

    Map<UUID, Hour> of(Collection<UUID> visits, Frame frame) {
        Map<UUID, HourState> known = states.of(visits);
        Map<UUID, List<Step>> happened = steps.of(visits);
        StandingWords words = Bundles.of(StandingWords.class, frame.locale());
        ZoneId zone = businesses.current().zone();
        return visits.stream().distinct().collect(Collectors.toMap(visit -> visit, visit -> {
            HourState state = known.getOrDefault(visit, HourState.WITHOUT_DAY);
            List<String> lines = happened.getOrDefault(visit, List.of()).stream()
                    .map(step -> line(step, words, frame, zone))
                    .toList();
            return new Hour(state.code(), word(state, words), lines);
        }));
    }

    static String word(HourState state, Locale locale) {
        return word(state, Bundles.of(StandingWords.class, locale));
    }

    private static String word(HourState state, StandingWords words) {
        return switch (state) {
            case WITHOUT_DAY -> words.without_day();
            case PROPOSED -> words.proposed();
            case CONFIRMED -> words.confirmed();
            case UNDER_WAY -> words.under_way();
            case DONE -> words.done();
            case CANCELLED -> words.cancelled();
            case NO_ACCESS -> words.no_access();
            case NOT_KEPT -> words.not_kept();
        };
    }

    private static String line(Step step, StandingWords words, Frame frame, ZoneId zone) {
        String why = step.why();
        String what = what(step, words, frame);
        String said = why == null ? what : words.with_why(what, why);
        Step.Hour now = step.now();
        LocalDate day = now != null && step.kind().compareTo(Step.Kind.UNDER_WAY) > 0
                ? now.day()
                : step.at().atZone(zone).toLocalDate();
        String by = step.by();
        return by == null ? words.said_by_nobody(frame.brief(day), said) : words.said(frame.brief(day), by, said);
    }

    private static String what(Step step, StandingWords words, Frame frame) {
        return switch (step.kind()) {
            case GIVEN -> words.given(name(step.now()), when(step.now(), words, frame));
            case TOLD -> words.told(when(step.now(), words, frame));
            case MOVED -> asked(moved(step, words, frame), step.askedBy(), words);
            case UNDER_WAY -> words.under_way();
            case CLOSED -> words.done();
            case CANCELLED -> words.cancelled();
            case NO_ACCESS -> words.no_access();
            case NOT_KEPT -> words.not_kept();
        };
    }

    private static String moved(Step step, StandingWords words, Frame frame) {
        String was = when(step.was(), words, frame);
        if (step.now() == null) {
            return words.taken_off(was);
        }
        String now = when(step.now(), words, frame);
        return was.equals(now) ? words.handed(name(step.was()), name(step.now())) : words.moved(was, now);
    }

    private static String asked(String what, Moving.@Nullable By by, StandingWords words) {
        if (by == null) {
            return what;
        }
        return by == Moving.By.CUSTOMER ? words.customer_asked(what) : words.by_us(what);
    }

    private static String when(Step.@Nullable Hour hour, StandingWords words, Frame frame) {
        if (hour == null) {
            return "";
        }
        LocalTime starts = hour.starts();
        return starts == null ? frame.brief(hour.day()) : words.hour(frame.brief(hour.day()), starts.toString());
    }

    private static String name(Step.@Nullable Hour hour) {
        return hour == null || hour.technician() == null ? "" : hour.technician();
    }
}
