package changeover.web.api;

import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Today;
import changeover.scheduling.stopped.HeatAnswer;
import changeover.scheduling.stopped.MachineStops;
import changeover.scheduling.stopped.NewStop;
import changeover.scheduling.stopped.RestoringTicket;
import changeover.scheduling.stopped.StopCorrections;
import changeover.scheduling.stopped.StopDeeds;
import changeover.scheduling.stopped.StopDuty;
import changeover.scheduling.stopped.StopEnd;
import changeover.scheduling.stopped.StopLists;
import changeover.web.session.Once;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What a document asks of a stopped machine, the same by the office's road and by a visit's. */
@ApplicationScoped
class StopAnswers {

    private static final int WORDS = 2000;
    private static final int LINE = 200;

    @Inject
    MachineStops stops;

    @Inject
    StopDeeds deeds;

    @Inject
    StopCorrections corrections;

    @Inject
    StopLists lists;

    @Inject
    Today today;

    @Inject
    Businesses businesses;

    @Inject
    CurrentTenant current;

    @Inject
    Tongue tongue;

    /** {@code seen}, optionally {@code equipment, language, shutOff, ticket}. */
    StopDocument stop(@Nullable String operation, UUID home, @Nullable UUID visit, Asked asked) {
        UUID machine = asked.idOrNone("equipment");
        String seen = asked.text("seen", WORDS);
        String language = asked.value("language") == null
                ? tongue.locale().getLanguage().equals("fr") ? "fr" : "en"
                : asked.oneOf("language", Set.of("en", "fr"));
        String shutOff = asked.line("shutOff", WORDS);
        @Nullable String ticket = asked.value("ticket") == null ? null : asked.oneOf("ticket", RestoringTicket.TICKETS);
        asked.nothingElse().understood();
        return StopDocument.of(stops.stop(
                Once.named(operation),
                new NewStop(home, machine, visit, seen, language, shutOff, ticket),
                current.person()));
    }

    /** {@code code, who}, optionally {@code day} (today) and {@code words}. */
    StopDocument duty(UUID stop, Asked asked) {
        String code = asked.text("code", 60);
        String who = asked.text("who", LINE);
        LocalDate day = asked.dayOrNone("day");
        String words = asked.line("words", WORDS);
        asked.nothingElse().understood();
        deeds.done(stop, code, who, day == null ? today.day() : day, words);
        return document(stop);
    }

    /** {@code words, source, due}, optionally {@code whose} (office, whoever-stops). */
    StopDocument add(@Nullable String operation, UUID stop, Asked asked) {
        String words = asked.text("words", WORDS);
        String source = asked.text("source", WORDS);
        LocalDate due = asked.day("due");
        String whose = asked.value("whose") == null
                ? StopDuty.OFFICE
                : asked.oneOf("whose", Set.of(StopDuty.OFFICE, StopDuty.WHOEVER));
        asked.nothingElse().understood();
        corrections.add(
                Once.named(operation),
                stop,
                new StopCorrections.NewDuty(words, whose.equals(StopDuty.OFFICE), due, source),
                current.person());
        return document(stop);
    }

    /** {@code ticket, why}. */
    StopDocument ticket(UUID stop, Asked asked) {
        String ticket = asked.oneOf("ticket", RestoringTicket.TICKETS);
        String why = asked.text("why", WORDS);
        asked.nothingElse().understood();
        corrections.ticket(stop, ticket, why, current.person());
        return document(stop);
    }

    /** {@code onlyHeat, freezing}, and where both are true {@code tonight, officeWho, officeAt, customerWho, customerAt}. */
    StopDocument heat(UUID stop, Asked asked) {
        boolean only = asked.yes("onlyHeat");
        boolean freezing = asked.yes("freezing");
        String tonight = asked.line("tonight", WORDS);
        var answer = new HeatAnswer(only, freezing, tonight, called(asked, "office"), called(asked, "customer"));
        asked.nothingElse().understood();
        deeds.heat(stop, answer, current.person());
        return document(stop);
    }

    private HeatAnswer.@Nullable Called called(Asked asked, String whom) {
        String who = asked.line(whom + "Who", LINE);
        return who == null
                ? null
                : HeatAnswer.Called.of(
                        who,
                        asked.time(whom + "At"),
                        today.time(),
                        businesses.current().zone());
    }

    /** {@code how} (in_service, taken_out) and {@code done}; by whoever asks, with their own ticket. */
    StopDocument end(UUID stop, Asked asked) {
        StopEnd how = StopEnd.of(word(asked.oneOf("how", StopEnd.codes())));
        String done = asked.line("done", WORDS);
        asked.nothingElse().understood();
        deeds.end(stop, how, Objects.requireNonNullElse(done, ""), current.person());
        return document(stop);
    }

    /** {@code how, done, partner}, optionally {@code day} (today). */
    StopDocument endByPartner(UUID stop, Asked asked) {
        StopEnd how = StopEnd.of(word(asked.oneOf("how", StopEnd.codes())));
        String done = asked.line("done", WORDS);
        UUID partner = asked.id("partner");
        LocalDate day = asked.dayOrNone("day");
        asked.nothingElse().understood();
        deeds.endByPartner(
                stop,
                how,
                Objects.requireNonNullElse(done, ""),
                partner,
                day == null ? today.day() : day,
                current.person());
        return document(stop);
    }

    /** What was not understood is refused a line later; until then it stands for something. */
    private static String word(String how) {
        return how.isEmpty() ? StopEnd.IN_SERVICE.code() : how;
    }

    StopDocument document(UUID stop) {
        return StopDocument.of(lists.find(stop).orElseThrow());
    }
}
