package changeover.scheduling.households;

import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.List;

/** How seldom a filter may run dirty before somebody looks: the business says it, 15 in a hundred if it says nothing. */
@ApplicationScoped
public class AcceptedChance {

    public static final int USUAL = 15;
    public static final int LEAST = 1;
    public static final int MOST = 50;

    @Inject
    EntityManager rows;

    /** In a hundred. */
    public int percent() {
        List<?> said = rows.createNativeQuery(
                        "select percent from accepted_chance where tenant_id = current_tenant()", Integer.class)
                .getResultList();
        return said.isEmpty() ? USUAL : (Integer) said.getFirst();
    }

    public void accept(int percent) {
        if (percent < LEAST || percent > MOST) {
            throw Refusal.of("filter.chance").at("percent").thrown();
        }
        rows.createNativeQuery("""
                        insert into accepted_chance (percent) values (:percent)
                        on conflict (tenant_id) do update set percent = excluded.percent,
                          version = accepted_chance.version + 1""").setParameter("percent", percent).executeUpdate();
    }
}
