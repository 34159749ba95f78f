package changeover.scheduling.orders;

import changeover.contracts.money.Money;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Wording;
import changeover.scheduling.stock.KnownPart.Amount;
import changeover.scheduling.stock.Stock;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import jakarta.persistence.Tuple;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Wrong and unused parts: back to the shelf, or to the supplier, who answers with a credit or with a no. */
@ApplicationScoped
public class PartReturns {

    private static final String FROM = """
            select r.id, r.order_id, o.home_id, concat_ws(', ', h.street, h.unit_label, h.city) as home, o.part_code,
                   coalesce(p.name_en, o.part_code) as name_en, coalesce(p.name_fr, o.part_code) as name_fr, r.quantity,
                   o.supplier, f.name as from_name, t.name as to_name, r.day, r.why, r.words, r.credit_minor,
                   cast(r.currency as text) as currency,
                   c.day as answered_on, c.amount_minor, cast(c.currency as text) as answered_in, c.words as answer
              from part_return r
              join part_order o on (o.tenant_id, o.id) = (r.tenant_id, r.order_id)
              join home h on (h.tenant_id, h.id) = (o.tenant_id, o.home_id)
              join stock_place f on (f.tenant_id, f.id) = (r.tenant_id, r.from_place_id)
              left join stock_place t on (t.tenant_id, t.id) = (r.tenant_id, r.to_place_id)
              left join part p on (p.tenant_id, p.code) = (o.tenant_id, o.part_code)
              left join part_credit c on (c.tenant_id, c.return_id) = (r.tenant_id, r.id)
             where r.tenant_id = current_tenant()
            """;

    @Inject
    EntityManager rows;

    @Inject
    PartOrders orders;

    @Inject
    Stock stock;

    @Inject
    Today today;

    /** What came goes back; the same id again changes nothing. */
    public PartReturn giveBack(UUID id, NewReturn facts) {
        PartOrder order = orders.locked(facts.orderId());
        Optional<PartReturn> before = find(id);
        if (before.isPresent()) {
            return before.get();
        }
        BigDecimal kept = order.facts().kept();
        if (facts.quantity().compareTo(kept) > 0) {
            throw Refusal.of("part-order.more-than-came", Map.of("kept", kept))
                    .at("quantity")
                    .thrown();
        }
        UUID to = facts.to();
        if (to != null && facts.credit() != null) {
            throw Refusal.of("constraint.only_a_supplier_owes_a_credit")
                    .at("credit")
                    .thrown();
        }
        move(id, new Amount(order.partCode(), facts.quantity()), facts.from(), to);
        keep(id, facts, to);
        return find(id).orElseThrow();
    }

    /** What already lies where it shall stay moves nowhere. */
    private void move(UUID id, Amount amount, UUID from, @Nullable UUID to) {
        if (to == null) {
            stock.sendBack(id, from, amount);
        } else if (!to.equals(from)) {
            stock.move(id, from, to, List.of(amount), null);
        } else if (stock.onHand(from, amount.partCode()).compareTo(amount.quantity()) < 0) {
            throw Refusal.of(
                            "stock.short",
                            Map.of("part", amount.partCode(), "held", stock.onHand(from, amount.partCode())))
                    .at("quantity")
                    .thrown();
        }
    }

    private void keep(UUID id, NewReturn facts, @Nullable UUID to) {
        Money credit = facts.credit();
        rows.createNativeQuery("""
                        insert into part_return (id, order_id, from_place_id, to_place_id, quantity, day, why, words,
                          credit_minor, currency)
                        values (:id, :order, :from, cast(:to as uuid), :quantity, :day, :why, cast(:words as text),
                          cast(:credit as bigint), cast(:currency as text))
                        """)
                .setParameter("id", id)
                .setParameter("order", facts.orderId())
                .setParameter("from", facts.from())
                .setParameter("to", to == null ? null : to.toString())
                .setParameter("quantity", facts.quantity())
                .setParameter("day", today.day())
                .setParameter("why", facts.why().code())
                .setParameter("words", facts.words())
                .setParameter("credit", credit == null ? null : Long.toString(credit.minor()))
                .setParameter(
                        "currency", credit == null ? null : credit.currency().getCurrencyCode())
                .executeUpdate();
    }

    /** The supplier answered. @param amount null for a no, which says why */
    public void answer(UUID id, LocalDate day, @Nullable Money amount, @Nullable String words) {
        PartReturn back =
                find(id).orElseThrow(() -> Refusal.of("part-order.unknown").thrown());
        var _ = orders.locked(back.orderId());
        if (!find(id).orElseThrow().isOpen()) {
            throw Refusal.of("part-order.answered").thrown();
        }
        if (day.isBefore(back.day()) || day.isAfter(today.day())) {
            throw Refusal.of("part-order.credit-day").at("day").thrown();
        }
        if (amount == null ? words == null || words.isBlank() : !amount.isPositive()) {
            throw Refusal.of(amount == null ? "text.missing" : "part-order.credit-of-nothing")
                    .at(amount == null ? "words" : "amount")
                    .thrown();
        }
        rows.createNativeQuery("""
                        insert into part_credit (return_id, day, amount_minor, currency, words)
                        values (:back, :day, cast(:amount as bigint), cast(:currency as text), cast(:words as text))
                        """)
                .setParameter("back", id)
                .setParameter("day", day)
                .setParameter("amount", amount == null ? null : Long.toString(amount.minor()))
                .setParameter(
                        "currency", amount == null ? null : amount.currency().getCurrencyCode())
                .setParameter("words", words)
                .executeUpdate();
    }

    public Optional<PartReturn> find(UUID id) {
        return read(rows.createNativeQuery(FROM + " and r.id = :id", Tuple.class)
                        .setParameter("id", id))
                .stream()
                .findFirst();
    }

    public List<PartReturn> ofOrder(UUID order) {
        return read(rows.createNativeQuery(FROM + " and r.order_id = :order order by r.day, r.id", Tuple.class)
                .setParameter("order", order));
    }

    /** What suppliers have not answered, the oldest first. */
    public List<PartReturn> open() {
        return read(rows.createNativeQuery(
                FROM + " and r.to_place_id is null and c.id is null order by r.day, r.id", Tuple.class));
    }

    @SuppressWarnings("unchecked")
    private static List<PartReturn> read(Query ask) {
        List<Tuple> found = ask.getResultList();
        return found.stream().map(PartReturns::row).toList();
    }

    private static PartReturn row(Tuple row) {
        LocalDate answered = row.get("answered_on", LocalDate.class);
        return new PartReturn(
                row.get("id", UUID.class),
                row.get("order_id", UUID.class),
                row.get("home_id", UUID.class),
                row.get("home", String.class),
                row.get("part_code", String.class),
                new Wording(row.get("name_en", String.class), row.get("name_fr", String.class)),
                OrderLists.plain(row.get("quantity", BigDecimal.class)),
                row.get("supplier", String.class),
                row.get("from_name", String.class),
                row.get("to_name", String.class),
                row.get("day", LocalDate.class),
                ReturnWhy.of(row.get("why", String.class)),
                row.get("words", String.class),
                money(row, "credit_minor", "currency"),
                answered == null
                        ? null
                        : new PartReturn.Answer(
                                answered, money(row, "amount_minor", "answered_in"), row.get("answer", String.class)));
    }

    private static @Nullable Money money(Tuple row, String minor, String currency) {
        Long amount = row.get(minor, Long.class);
        return amount == null ? null : Money.ofMinor(amount, row.get(currency, String.class));
    }
}
