package changeover.scheduling.calls;

import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;

/** Turns on call that go round in the current business, written down turn by turn: each may be taken away by itself. */
@ApplicationScoped
public class OnCallRounds {

    @Inject
    EntityManager rows;

    @Inject
    People people;

    @Inject
    OnCalls onCalls;

    /**
     * @return the new turns and the days that still have nobody
     * @throws changeover.contracts.words.Refused for somebody who is not of this business, or when no day is free
     */
    public OnCallRound.Laid lay(OnCallRound round) {
        Map<UUID, Membership> members = new HashMap<>();
        for (UUID person : round.order()) {
            members.put(
                    person,
                    people.of(person)
                            .orElseThrow(() ->
                                    Refusal.of("on-call.nobody").at("order").thrown()));
        }
        OnCallRound.Laid laid = round.turns(
                (person, day) -> Objects.requireNonNull(members.get(person)).worksOn(day),
                onCalls.in(round.days()).stream().map(OnCall::days).toList());
        if (laid.turns().isEmpty()) {
            throw Refusal.of(laid.open().isEmpty() ? "on-call.all-taken" : "on-call.nobody")
                    .at(laid.open().isEmpty() ? "from" : "order")
                    .thrown();
        }
        laid.turns().forEach(turn -> rows.persist(OnCall.of(turn.person(), turn.days())));
        rows.flush();
        return laid;
    }

    /** Who the round names first, in the order in which they were on call last: the longest ago first. */
    @SuppressWarnings("unchecked")
    public List<UUID> longestAgo() {
        return rows.createNativeQuery("""
                        select m.person_id from membership m left join (
                          select person_id, max(until_day) as until_day from on_call
                           where tenant_id = current_tenant() group by person_id) o on o.person_id = m.person_id
                         where m.tenant_id = current_tenant() and m.role = 'technician' and m.until_day is null
                           and (m.asked_on is null or m.joined_on is not null)
                         order by o.until_day nulls first, m.name, m.person_id""", UUID.class).getResultList();
    }
}
