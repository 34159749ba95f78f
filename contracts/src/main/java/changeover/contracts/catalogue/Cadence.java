package changeover.contracts.catalogue;

import changeover.contracts.calendar.Climate;
import changeover.contracts.calendar.Term;
import changeover.contracts.calendar.Window;
import changeover.contracts.words.Wording;
import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import java.time.Period;
import java.util.List;

/**
 * How often a task is promised.
 *
 * <p>A season belongs to the term in which it opens and is given once. One still open on the first day of a term is kept
 * in that term if the business says so, and then its next opening belongs to the next term.
 */
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "how")
@JsonSubTypes({
    @JsonSubTypes.Type(value = Cadence.EveryMonths.class, name = "every-months"),
    @JsonSubTypes.Type(value = Cadence.BeforeSeason.class, name = "before-season"),
    @JsonSubTypes.Type(value = Cadence.EachSeason.class, name = "each-season"),
    @JsonSubTypes.Type(value = Cadence.TimesAYear.class, name = "times-a-year"),
    @JsonSubTypes.Type(value = Cadence.CheckThenReplace.class, name = "check-then-replace"),
    @JsonSubTypes.Type(value = Cadence.LookThenChange.class, name = "look-then-change"),
    @JsonSubTypes.Type(value = Cadence.OnRequest.class, name = "on-request")
})
public sealed interface Cadence {

    /**
     * So many months after the last time; allowed from {@code min} to {@code max} months after it. Month steps are
     * counted from the day it was done and clipped to the month's end.
     */
    record EveryMonths(int months, int min, int max) implements Cadence {
        public EveryMonths {
            if (min < 1 || min > months || months > max || max > 120) {
                throw new IllegalArgumentException("months: " + min + " " + months + " " + max);
            }
        }

        public static EveryMonths exactly(int months) {
            return new EveryMonths(months, months, months);
        }
    }

    /** In the lead before a season opens, and done when it opens. */
    record BeforeSeason(String season, Period lead) implements Cadence {
        public BeforeSeason {
            if (lead.isNegative() || lead.isZero() || lead.toTotalMonths() > 11) {
                throw new IllegalArgumentException("lead: " + lead);
            }
        }
    }

    /** Once in each of these seasons. */
    record EachSeason(List<String> seasons) implements Cadence {
        public EachSeason {
            seasons = List.copyOf(seasons);
            if (seasons.isEmpty()) {
                throw new IllegalArgumentException("each season of none");
            }
        }

        public static EachSeason of(String... seasons) {
            return new EachSeason(List.of(seasons));
        }
    }

    /** So many times in twelve months, one in each equal part of the term. */
    record TimesAYear(int times) implements Cadence {
        public TimesAYear {
            if (times < 1 || times > 52) {
                throw new IllegalArgumentException("times: " + times);
            }
        }
    }

    /** Looked at every so many months and replaced when it needs it, at the latest after the cap. */
    record CheckThenReplace(int checkMonths, int capMonths) implements Cadence {
        public CheckThenReplace {
            if (checkMonths < 1 || capMonths < checkMonths || capMonths > 120) {
                throw new IllegalArgumentException("months: " + checkMonths + " " + capMonths);
            }
        }
    }

    /** Looked at once so many days after the last change, and changed after so many at the latest: one home's own rhythm. */
    record LookThenChange(int lookDays, int changeDays) implements Cadence {
        public LookThenChange {
            if (lookDays < 7 || changeDays < lookDays || changeDays > 1830) {
                throw new IllegalArgumentException("days: " + lookDays + " " + changeDays);
            }
        }
    }

    /** Only when somebody asks or a finding calls for it. */
    record OnRequest() implements Cadence {}

    /** Every time it falls due in the term, in order of the days; a season the climate does not name gives nothing. */
    default List<Due> duesIn(Term term, History history, SeasonRules rules) {
        return switch (this) {
            case EveryMonths(int months, int min, int max) -> MonthClock.every(months, min, max, term, history);
            case BeforeSeason(String season, Period lead) ->
                SeasonTurns.before(season, lead, rules.climate()).duesIn(term, history, rules);
            case EachSeason(List<String> seasons) ->
                SeasonTurns.inEach(seasons, rules.climate()).duesIn(term, history, rules);
            case TimesAYear(int times) -> MonthClock.times(times, term);
            case CheckThenReplace(int check, int cap) -> MonthClock.checks(check, cap, term, history);
            case LookThenChange(int look, int change) -> MonthClock.looks(look, change, term, history);
            case OnRequest() -> List.of();
        };
    }

    /** Whether done early or late shifts the next time; what belongs to a season or to a part of the year stays there. */
    default boolean countsFromLastTime() {
        return switch (this) {
            case EveryMonths _, CheckThenReplace _, LookThenChange _ -> true;
            case BeforeSeason _, EachSeason _, TimesAYear _, OnRequest _ -> false;
        };
    }

    /** The windows of {@link #duesIn}. */
    default List<Window> windowsIn(Term term, History history, SeasonRules rules) {
        return duesIn(term, history, rules).stream().map(Due::window).toList();
    }

    /** As people say it: "before each heating season". */
    default Wording sentence(Climate climate) {
        return CadenceSentence.of(this, climate);
    }

    /** As it is stored: {@code {"how":"each-season","seasons":["heating"]}}. */
    default String json() {
        return CatalogueJson.write(this);
    }

    /** @throws IllegalArgumentException when it is no cadence */
    static Cadence ofJson(String json) {
        return CatalogueJson.read(json, Cadence.class);
    }
}
