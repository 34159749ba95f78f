package changeover.contracts.customers;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Who is what to the homes of the current business, today and before. */
@ApplicationScoped
public class HomeParts {

    @Inject
    EntityManager rows;

    /** A customer takes a part from a day; whoever signed or paid until then stops that day. */
    public HomePart begin(
            UUID homeId, UUID customerId, PartInHome part, LocalDate from, @Nullable String purchaseOrder) {
        if (part.onlyOneAtATime()) {
            on(homeId, from).stream().filter(played -> played.part() == part).forEach(played -> stop(played, from));
            rows.flush();
        }
        HomePart begun = HomePart.begin(homeId, customerId, part, from, purchaseOrder);
        rows.persist(begun);
        rows.flush();
        return begun;
    }

    private void stop(HomePart played, LocalDate day) {
        if (day.isAfter(played.from())) {
            played.end(day);
        } else {
            rows.remove(played);
        }
    }

    /** Parts pass to a customer on a day: whoever had them until then has them no more. */
    public void pass(UUID homeId, UUID customerId, Set<PartInHome> passing, LocalDate day) {
        on(homeId, day).stream()
                .filter(played -> passing.contains(played.part()))
                .forEach(played -> stop(played, day));
        rows.flush();
        for (PartInHome part : PartInHome.values()) {
            if (passing.contains(part)) {
                begin(homeId, customerId, part, day, null);
            }
        }
    }

    /** One customer takes every part of a home: the owner who lives there. */
    public void beginAll(UUID homeId, UUID customerId, LocalDate from) {
        for (PartInHome part : PartInHome.values()) {
            begin(homeId, customerId, part, from, null);
        }
    }

    /** The part ends before this day; false when there is none of that id here. */
    public boolean end(UUID partId, LocalDate day) {
        HomePart found = rows.find(HomePart.class, partId);
        if (found == null) {
            return false;
        }
        found.end(day);
        rows.flush();
        return true;
    }

    /** Every part that was ever played in the home, oldest first. */
    public List<HomePart> of(UUID homeId) {
        return rows.createQuery("from HomePart where homeId = :home order by from, part, id", HomePart.class)
                .setParameter("home", homeId)
                .getResultList();
    }

    /** The parts played on a day. */
    public List<HomePart> on(UUID homeId, LocalDate day) {
        return of(homeId).stream().filter(part -> part.isPlayedOn(day)).toList();
    }

    public Optional<HomePart> on(UUID homeId, PartInHome part, LocalDate day) {
        return on(homeId, day).stream().filter(played -> played.part() == part).findFirst();
    }

    /** Who plays the part on that day, by home; a home where nobody does is missing. */
    public Map<UUID, UUID> customers(Collection<UUID> homeIds, PartInHome part, LocalDate day) {
        var found = new LinkedHashMap<UUID, UUID>();
        rows.createQuery("""
                        from HomePart where homeId in :homes and part = :part and from <= :day
                        and (until is null or until > :day) order by from, id
                        """, HomePart.class)
                .setParameter("homes", homeIds)
                .setParameter("part", part.code())
                .setParameter("day", day)
                .getResultStream()
                .forEach(played -> found.putIfAbsent(played.homeId(), played.customerId()));
        return found;
    }

    /** The homes in which the customer plays a part on that day. */
    public List<UUID> homesOf(UUID customerId, LocalDate day) {
        return rows.createQuery("""
                        select distinct homeId from HomePart where customerId = :customer and from <= :day
                        and (until is null or until > :day)
                        """, UUID.class)
                .setParameter("customer", customerId)
                .setParameter("day", day)
                .getResultList();
    }
}
