package changeover.contracts.tenants;

import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** The businesses; each sees its own row only. */
@ApplicationScoped
public class Businesses {

    private static final Pattern SLUG = Pattern.compile("[a-z0-9][a-z0-9-]{1,38}[a-z0-9]");

    /** First path segments that are the house's own, so no business may take them. */
    private static final List<String> OURS = List.of("api", "q", "css", "fonts", "js", "webjars", "link", "signed-out");

    @Inject
    EntityManager rows;

    @Inject
    CurrentTenant current;

    @Inject
    Event<BusinessOpened> opened;

    /**
     * Opens a business under the current tenant's id, which is new. Whoever begins with rows of their own hears
     * {@link BusinessOpened}.
     */
    public Business open(NewBusiness facts, LocalDate day) {
        if (!SLUG.matcher(facts.slug()).matches() || OURS.contains(facts.slug())) {
            throw Refusal.of("business.slug-shape", Map.of("slug", facts.slug()))
                    .at("slug")
                    .thrown();
        }
        Business business = Business.open(current.id(), facts, day);
        rows.persist(business);
        rows.flush();
        rows.persist(BusinessProfile.write(new BusinessProfile.Facts(
                null,
                facts.address(),
                "",
                facts.place().region(),
                "",
                facts.place().country(),
                facts.phone(),
                facts.email(),
                facts.licence(),
                facts.gstNumber(),
                facts.qstNumber(),
                facts.smallSupplier(),
                true,
                30,
                "system",
                null)));
        rows.flush();
        opened.fire(new BusinessOpened(business.id(), business.country(), business.region(), business.language(), day));
        return business;
    }

    public Business current() {
        UUID id = current.id();
        Business found = rows.find(Business.class, id);
        if (found == null) {
            throw new IllegalStateException("no business " + id);
        }
        return found;
    }

    /** What was rewritten is stored now, so that its edition is the new one. */
    public void keep() {
        rows.flush();
    }

    public BusinessProfile profile() {
        return rows.createQuery("from BusinessProfile", BusinessProfile.class).getSingleResult();
    }

    /**
     * The business in hand, its profile, and the person as the business knows them.
     *
     * @param member null for somebody who does not work here
     */
    public record AtHand(
            Business business,
            BusinessProfile profile,
            @Nullable Membership member) {}

    /** Everything that stands around a page, in one statement. */
    public AtHand atHand() {
        Object[] row = rows.createQuery("""
                        select b, p, m from Business b join BusinessProfile p on true
                        left join Membership m on m.personId = :person
                        where b.id = :business
                        """, Object[].class)
                .setParameter("person", current.person())
                .setParameter("business", current.id())
                .getSingleResult();
        return new AtHand((Business) row[0], (BusinessProfile) row[1], (Membership) row[2]);
    }
}
