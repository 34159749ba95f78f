package changeover.scheduling.dayplan.change;

import changeover.contracts.tenants.ManyRows;
import changeover.contracts.tenants.Today;
import changeover.scheduling.dayplan.Minutes;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Set;
import java.util.UUID;

/**
 * Who hears of a day that moved: whoever was told an hour is written to once, and is rung where nothing could be written,
 * where it is too near to be read in time, or where there is no new day yet.
 */
@ApplicationScoped
public class WholeDayHeard {

    private static final String RING_AGAIN = """
            insert into to_ring (visit_id, was_day, was_starts, was_technician_id, was_told, why)
            select v.visit_id, w.day, v.was_starts, v.was_technician_id, v.told, w.why
              from whole_day_visit v join whole_day w on w.tenant_id = v.tenant_id and w.id = v.whole_day_id
             where v.tenant_id = current_tenant() and v.whole_day_id = :day and v.customer_id = :customer and v.told
               and not exists (select 1 from to_ring r where r.tenant_id = v.tenant_id and r.visit_id = v.visit_id
                 and r.was_day = w.day and r.was_starts = v.was_starts)
               and not exists (select 1 from visit_ending e where e.tenant_id = v.tenant_id and e.visit_id = v.visit_id)
            """;

    @Inject
    AgroalDataSource database;

    @Inject
    EntityManager rows;

    @Inject
    HoursTold told;

    @Inject
    Today today;

    /** @param today a message about today or tomorrow may be read too late */
    static boolean mustBeRung(WholeDay.Goes one, LocalDate was, boolean writtenTo, LocalDate today) {
        return one.visit().told() && (!writtenTo || one.day() == null || !was.isAfter(today.plusDays(1)));
    }

    /** @param writtenTo the customers to whom one message was written; they know their new hours by it */
    public void written(WholeDays.Done done, Set<UUID> writtenTo) {
        Collection<WholeDay.Goes> visits = done.proposed().day().visits();
        told.tellThese(visits.stream()
                .filter(one -> one.visit().told() && one.day() != null && isIn(writtenTo, one))
                .map(one -> one.visit().visit())
                .toList());
        var rings = ManyRows.into(
                "to_ring",
                "visit_id uuid, was_day date, was_starts time, was_technician_id uuid, was_told boolean, why text");
        visits.stream()
                .filter(one -> mustBeRung(one, done.day(), isIn(writtenTo, one), today.day()))
                .map(WholeDay.Goes::visit)
                .forEach(was -> rings.add(
                        was.visit(),
                        done.day(),
                        Minutes.time(was.was()),
                        was.technician(),
                        true,
                        done.reason().why()));
        try (Connection connection = database.getConnection()) {
            rings.store(connection);
        } catch (SQLException cause) {
            throw new IllegalStateException("the list to ring could not be written", cause);
        }
    }

    private static boolean isIn(Set<UUID> customers, WholeDay.Goes one) {
        UUID customer = one.visit().customer();
        return customer != null && customers.contains(customer);
    }

    /** The message never left, since an hour in it had changed: they must be rung. */
    public void unheard(UUID wholeDay, UUID customer) {
        rows.createNativeQuery(RING_AGAIN)
                .setParameter("day", wholeDay)
                .setParameter("customer", customer)
                .executeUpdate();
    }
}
