package changeover.scheduling.stock;

import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Wording;
import changeover.scheduling.stock.KnownPart.Amount;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Any;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

/**
 * A filter or a pad that a home gets between visits, left at the door or posted, leaves its place and is one of those that the
 * home's plan gives; more than the plan gives is not given here, it is sold.
 */
@ApplicationScoped
public class PartsGiven {

    @Inject
    EntityManager rows;

    @Inject
    Parts parts;

    @Inject
    Stock stock;

    @Inject
    @Any
    Instance<WhatPlansLeave> plans;

    @Inject
    Today today;

    /** How it came to the home. */
    public enum How {
        LEFT,
        POSTED;

        public String code() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** One that was given. */
    public record Given(
            UUID id, LocalDate day, Wording part, String partCode, BigDecimal quantity, How how, String place) {}

    /**
     * @param operation seen before it gives nothing again
     * @throws changeover.contracts.words.Refused when no plan gives such a part, or fewer are left than asked for
     */
    public void give(UUID operation, UUID home, Amount amount, UUID place, How how) {
        wait(home);
        if (stock.placeOf(operation).isPresent()) {
            return;
        }
        KnownPart part = parts.find(amount.partCode())
                .orElseThrow(() -> Refusal.of("stock.part-not-found").at("part").thrown());
        WhatPlansLeave.Left left = plans.stream()
                .flatMap(one -> one.of(home, kinds(part), today.day()).stream())
                .findFirst()
                .orElseThrow(
                        () -> Refusal.of("stock.plan-gives-none").at("part").thrown());
        if (left.left().compareTo(amount.quantity()) < 0) {
            throw Refusal.of(
                            "stock.plan-gives-fewer",
                            Map.of(
                                    "cap",
                                    plain(left.cap()),
                                    "left",
                                    plain(left.left().max(BigDecimal.ZERO))))
                    .at("quantity")
                    .thrown();
        }
        stock.give(operation, place, amount, how.code());
        rows.createNativeQuery("""
                        insert into part_given (home_id, agreement_id, operation_id, part_code, part_kind, quantity, place_id,
                          how, day)
                        values (:home, :agreement, :operation, :part, :kind, :quantity, :place, :how, :day)""")
                .setParameter("home", home)
                .setParameter("agreement", left.agreementId())
                .setParameter("operation", operation)
                .setParameter("part", part.code())
                .setParameter("kind", left.kind())
                .setParameter("quantity", amount.quantity())
                .setParameter("place", place)
                .setParameter("how", how.code())
                .setParameter("day", today.day())
                .executeUpdate();
    }

    /** Two who give the last one at once do so one after the other. */
    private void wait(UUID home) {
        rows.createNativeQuery("select 1 from pg_advisory_xact_lock(hashtextextended('parts given ' || :home, 7))")
                .setParameter("home", home.toString())
                .getSingleResult();
    }

    /** The newest first. */
    public List<Given> ofHome(UUID home) {
        @SuppressWarnings("unchecked")
        List<Tuple> found = rows.createNativeQuery("""
                        select g.id, g.day, x.name_en, x.name_fr, g.part_code, g.quantity, g.how, p.name
                          from part_given g
                          join part x on x.tenant_id = g.tenant_id and x.code = g.part_code
                          join stock_place p on p.tenant_id = g.tenant_id and p.id = g.place_id
                         where g.tenant_id = current_tenant() and g.home_id = :home
                         order by g.day desc, g.id desc""", Tuple.class)
                .setParameter("home", home)
                .getResultList();
        return found.stream()
                .map(row -> new Given(
                        row.get(0, UUID.class),
                        row.get(1, LocalDate.class),
                        new Wording(row.get(2, String.class), row.get(3, String.class)),
                        row.get(4, String.class),
                        plain(row.get(5, BigDecimal.class)),
                        How.valueOf(row.get(6, String.class).toUpperCase(Locale.ROOT)),
                        row.get(7, String.class)))
                .toList();
    }

    /** A plan names a part by its own code, or by its kind. */
    private static Set<String> kinds(KnownPart part) {
        Set<String> kinds = new LinkedHashSet<>(List.of(part.code()));
        if (part.kind() != null) {
            kinds.add(part.kind());
        }
        return kinds;
    }

    private static BigDecimal plain(BigDecimal quantity) {
        BigDecimal bare = quantity.stripTrailingZeros();
        return bare.scale() < 0 ? bare.setScale(0) : bare;
    }
}
