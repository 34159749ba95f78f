package changeover.web.session;

import changeover.contracts.money.Money;
import changeover.contracts.words.Refusal;
import changeover.scheduling.calls.Call;
import changeover.scheduling.calls.Heat;
import changeover.scheduling.calls.NewCallers.NewCaller;
import changeover.scheduling.calls.Risk;
import changeover.scheduling.calls.Trouble;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.Currency;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A call as it was typed: life first, then what is wrong, then where.
 *
 * @param home the home that was chosen, or none for a new one
 * @param newcomer who rings from a home that is not here yet
 */
public record CallForm(UUID made, @Nullable UUID home, NewCaller newcomer, Call.Facts said) {

    private static final Set<String> TROUBLES =
            Arrays.stream(Trouble.values()).map(Trouble::code).collect(Collectors.toUnmodifiableSet());
    private static final Set<String> HEATS =
            Arrays.stream(Heat.values()).map(Heat::code).collect(Collectors.toUnmodifiableSet());

    private static final UUID NOT_YET = new UUID(0, 0);

    /** Reads every field; what is wrong is kept in {@code typed}. */
    public static CallForm read(Typed typed, ZoneId zone, Currency currency) {
        Call.Facts said = facts(typed, at(typed.day("day"), typed.time("time"), zone), zone, currency);
        UUID home = typed.idOrNone("home");
        NewCaller newcomer = home == null
                ? new NewCaller(
                        said.caller(),
                        said.phone(),
                        typed.oneOf("language", Set.of("en", "fr")),
                        typed.text("street", 200),
                        typed.text("city", 100),
                        typed.line("postal", 20))
                : new NewCaller(said.caller(), said.phone(), "en", "", "", null);
        return new CallForm(typed.id("made"), home, newcomer, said);
    }

    /** What was said on the telephone, at that hour. */
    public static Call.Facts facts(Typed typed, Instant rang, ZoneId zone, Currency currency) {
        Set<Risk> risks = typed.each("risks").stream()
                .filter(Risk.codes()::contains)
                .map(Risk::ofCode)
                .collect(Collectors.toSet());
        Trouble trouble = Trouble.ofCode(typed.oneOf("trouble", TROUBLES));
        boolean told = typed.ticked("told");
        if (!told && (trouble == Trouble.ALARM || risks.stream().anyMatch(Risk::isLife))) {
            typed.refuse(Refusal.of("call.life-first").at("told"));
        }
        Money money = typed.line("cost", 20) == null ? null : typed.money("cost", currency);
        return new Call.Facts(
                NOT_YET,
                typed.text("caller", 200),
                typed.line("phone", 40),
                rang,
                trouble,
                typed.text("words", 2000),
                Heat.ofCode(typed.oneOf("heat", HEATS)),
                risks,
                told,
                promised(typed, zone),
                money,
                typed.line("toldWords", 500));
    }

    /** The business's own answer time holds where no day was promised; a day without an hour is promised whole. */
    private static @Nullable Instant promised(Typed typed, ZoneId zone) {
        LocalDate day = typed.dayOrNone("promiseDay");
        boolean hour = typed.line("promiseTime", 20) != null;
        if (day == null) {
            if (hour) {
                typed.refuse(Refusal.of("call.promise-which-day").at("promiseDay"));
            }
            return null;
        }
        return at(day, hour ? typed.time("promiseTime") : LocalTime.of(23, 59), zone);
    }

    private static Instant at(LocalDate day, LocalTime time, ZoneId zone) {
        return day.atTime(time).atZone(zone).toInstant();
    }
}
