package changeover.web.api;

import changeover.contracts.words.Refusal;
import changeover.scheduling.calls.Call;
import changeover.scheduling.calls.Heat;
import changeover.scheduling.calls.Risk;
import changeover.scheduling.calls.Trouble;
import changeover.scheduling.calls.Urgency;
import java.time.Instant;
import java.util.Arrays;
import java.util.Currency;
import java.util.HashSet;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What a document says of a call: who rang, what is wrong, what is at risk, what was promised and told. */
record CallJson(Asked asked, Instant now, Currency currency) {

    private static final Set<String> TROUBLES =
            Arrays.stream(Trouble.values()).map(Trouble::code).collect(Collectors.toSet());
    private static final Set<String> HEATS =
            Arrays.stream(Heat.values()).map(Heat::code).collect(Collectors.toSet());

    /** @param rang null for now */
    Call.Facts facts(UUID home, @Nullable Instant rang) {
        Set<Risk> risks = new HashSet<>();
        for (Risk risk : Risk.values()) {
            if (asked.yes(risk.code())) {
                risks.add(risk);
            }
        }
        String trouble = asked.oneOf("trouble", TROUBLES);
        return new Call.Facts(
                home,
                asked.text("caller", 200),
                asked.line("phone", 40),
                rang == null ? now : rang,
                Trouble.ofCode(trouble.isEmpty() ? "other" : trouble),
                asked.text("words", 2000),
                asked.value("heat") == null ? Heat.UNKNOWN : Heat.ofCode(word(asked.oneOf("heat", HEATS))),
                risks,
                asked.yes("toldToLeave"),
                AskedInstant.of(asked, "promisedBy"),
                asked.value("told") == null ? null : asked.money("told", currency),
                asked.line("toldWords", 500));
    }

    /** What the call itself would refuse, said at the API's own members. */
    void judge(Call.Facts facts) {
        if (facts.urgency() == Urgency.LIFE && !facts.toldToLeave()) {
            asked.refuse(Refusal.of("call.life-first").at("toldToLeave"));
        }
        if (facts.rangAt().isAfter(now)) {
            asked.refuse(Refusal.of("call.ahead").at("rangAt"));
        }
        Instant promised = facts.promisedBy();
        if (promised != null && promised.isBefore(facts.rangAt())) {
            asked.refuse(Refusal.of("call.promise-before-ring").at("promisedBy"));
        }
    }

    private static String word(String heat) {
        return heat.isEmpty() ? Heat.UNKNOWN.code() : heat;
    }
}
