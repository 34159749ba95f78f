package changeover.scheduling.calls;

import changeover.contracts.words.Checks;
import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The answer times of the current business. */
@ApplicationScoped
public class AnswerTimes {

    @Inject
    EntityManager rows;

    public AnswerHours hours() {
        return new AnswerHours(all().stream().collect(Collectors.toMap(AnswerTime::asked, AnswerTime::hours)));
    }

    /** Writes the hours that are named; the others stay. */
    public void write(Map<AnswerHours.Asked, Integer> hours) {
        var checks = new Checks();
        hours.forEach((asked, one) -> {
            if (one < 1 || one > AnswerHours.MOST) {
                checks.refuse(asked.code(), Refusal.of("call.answer-hours", Map.of("most", AnswerHours.MOST)));
            }
        });
        checks.orRefuse();
        Map<AnswerHours.Asked, AnswerTime> written =
                all().stream().collect(Collectors.toMap(AnswerTime::asked, Function.identity()));
        hours.forEach((asked, one) -> {
            AnswerTime there = written.get(asked);
            if (there == null) {
                rows.persist(AnswerTime.of(asked, one));
            } else {
                there.becomes(one);
            }
        });
        rows.flush();
    }

    private List<AnswerTime> all() {
        return rows.createQuery("from AnswerTime", AnswerTime.class).getResultList();
    }
}
