package changeover.web.api;

import changeover.scheduling.stopped.HeatAnswer;
import changeover.scheduling.stopped.MachineStop;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A machine that must not be used, with what was done about it.
 *
 * @param sentence code of what was seen; null with {@code seen} and its {@code language}
 * @param ticket who may put it back
 * @param heat null while nobody has said whether it is the only heat
 * @param back null while it must not be used
 */
public record StopDocument(
        UUID id,
        UUID home,
        @Nullable UUID machine,
        @Nullable UUID visit,
        @Nullable UUID finding,
        String by,
        Instant at,
        LocalDate day,
        @Nullable String sentence,
        @Nullable String seen,
        @Nullable String language,
        @Nullable String shutOff,
        String ticket,
        String place,
        List<Duty> duties,
        List<Correction> corrections,
        @Nullable Heat heat,
        @Nullable Back back) {

    /**
     * @param who whoever-stops or office
     * @param read whether the source's text was read
     * @param done null while nobody has
     */
    public record Duty(
            String code,
            String wordsEn,
            String wordsFr,
            String who,
            LocalDate due,
            String source,
            String sourceFr,
            boolean read,
            @Nullable Done done) {}

    /** Another ticket was the right one. */
    public record Correction(String ticket, String why, String by, Instant at) {}

    public record Done(String who, LocalDate day, @Nullable String words) {}

    public record Heat(
            boolean onlyHeat,
            boolean freezing,
            @Nullable String tonight,
            @Nullable Called office,
            @Nullable Called customer,
            String by,
            Instant at) {}

    public record Called(String who, Instant at) {}

    /**
     * @param how in_service or taken_out
     * @param by who put it back, or wrote down what the partner did
     * @param partner name of the partner whose licence it was; null where it was one of us
     */
    public record Back(
            String how,
            String by,
            @Nullable String partner,
            String ticket,
            @Nullable String number,
            @Nullable LocalDate until,
            LocalDate day,
            String done) {}

    static StopDocument of(MachineStop stop) {
        MachineStop.Back back = stop.back();
        return new StopDocument(
                stop.id(),
                stop.homeId(),
                stop.equipmentId(),
                stop.visitId(),
                stop.findingId(),
                stop.person(),
                stop.at(),
                stop.day(),
                stop.sentence(),
                stop.seen(),
                stop.language(),
                stop.shutOff(),
                stop.ticket(),
                stop.place(),
                stop.duties().stream().map(StopDocument::duty).toList(),
                stop.corrections().stream()
                        .map(one -> new Correction(one.ticket(), one.why(), one.person(), one.at()))
                        .toList(),
                heat(stop.heat()),
                back == null
                        ? null
                        : new Back(
                                back.how().code(),
                                back.person(),
                                back.partner(),
                                back.ticket(),
                                back.number(),
                                back.until(),
                                back.day(),
                                back.done()));
    }

    private static Duty duty(MachineStop.Owed one) {
        MachineStop.Done done = one.done();
        return new Duty(
                one.duty().code(),
                one.duty().wording().en(),
                one.duty().wording().fr(),
                one.duty().who(),
                one.due(),
                one.duty().source().en(),
                one.duty().source().fr(),
                one.duty().read(),
                done == null ? null : new Done(done.who(), done.day(), done.words()));
    }

    private static @Nullable Heat heat(MachineStop.@Nullable Heat said) {
        if (said == null) {
            return null;
        }
        HeatAnswer answer = said.answer();
        return new Heat(
                answer.onlyHeat(),
                answer.freezing(),
                answer.tonight(),
                called(answer.office()),
                called(answer.customer()),
                said.person(),
                said.at());
    }

    private static @Nullable Called called(HeatAnswer.@Nullable Called called) {
        return called == null ? null : new Called(called.who(), called.at());
    }
}
