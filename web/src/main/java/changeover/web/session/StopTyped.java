package changeover.web.session;

import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.scheduling.stopped.HeatAnswer;
import changeover.scheduling.stopped.NewStop;
import changeover.scheduling.stopped.RestoringTicket;
import changeover.scheduling.stopped.StopCorrections;
import changeover.scheduling.stopped.StopDuty;
import changeover.scheduling.stopped.StopEnd;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The forms about a stopped machine, read the same in the office and at the door. */
@ApplicationScoped
public class StopTyped {

    private static final int WORDS = 2000;
    private static final int LINE = 200;
    private static final Set<String> YES_OR_NO = Set.of("yes", "no");
    private static final Set<String> WHOSE = Set.of(StopDuty.OFFICE, StopDuty.WHOEVER);

    @Inject
    Today today;

    @Inject
    Businesses businesses;

    /** @param visit where it is seen; null for the office */
    public NewStop stop(UUID home, @Nullable UUID visit, Typed typed, Locale locale) {
        UUID machine = typed.idOrNone("equipment");
        String seen = Objects.requireNonNullElse(typed.line("seen", WORDS), "");
        String shutOff = typed.line("shutOff", WORDS);
        @Nullable
        String ticket = typed.line("ticket", 40) == null ? null : typed.oneOf("ticket", RestoringTicket.TICKETS);
        typed.understood();
        return new NewStop(
                home, machine, visit, seen, locale.getLanguage().equals("fr") ? "fr" : "en", shutOff, ticket);
    }

    public HeatAnswer heat(Typed typed) {
        boolean only = typed.oneOf("onlyHeat", YES_OR_NO).equals("yes");
        boolean freezing = typed.oneOf("freezing", YES_OR_NO).equals("yes");
        var answer = new HeatAnswer(
                only, freezing, typed.line("tonight", WORDS), called(typed, "office"), called(typed, "customer"));
        typed.understood();
        return answer;
    }

    private HeatAnswer.@Nullable Called called(Typed typed, String whom) {
        String who = typed.line(whom + "Who", LINE);
        return who == null
                ? null
                : HeatAnswer.Called.of(
                        who,
                        typed.time(whom + "At"),
                        today.time(),
                        businesses.current().zone());
    }

    /** What else has to be done. */
    public StopCorrections.NewDuty duty(Typed typed) {
        return new StopCorrections.NewDuty(
                typed.text("words", WORDS),
                typed.oneOf("whose", WHOSE).equals(StopDuty.OFFICE),
                typed.day("due"),
                typed.text("source", WORDS));
    }

    /** What becomes of it. */
    public StopEnd end(Typed typed) {
        return StopEnd.of(typed.oneOf("how", StopEnd.codes()));
    }
}
