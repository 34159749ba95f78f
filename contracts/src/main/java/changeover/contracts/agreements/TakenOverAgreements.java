package changeover.contracts.agreements;

import changeover.contracts.agreements.AgreementsTakenOver.TakenOver;
import changeover.contracts.customers.Customer;
import changeover.contracts.customers.Customers;
import changeover.contracts.money.Money;
import changeover.contracts.plans.Plan;
import changeover.contracts.plans.Plans;
import changeover.contracts.tenants.ManyRows;
import changeover.contracts.words.Refusal;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Agreements that were in force before the business came here keep their own first day and price. They were sold
 * elsewhere: nothing is asked for them here but what a person says is still to be invoiced.
 */
@ApplicationScoped
public class TakenOverAgreements {

    /**
     * An agreement that runs.
     *
     * @param price of the term, before tax
     * @param paid null when nobody knows
     * @param asked what is still to be invoiced of the price
     */
    public record InForce(
            UUID homeId,
            String plan,
            LocalDate from,
            Money price,
            @Nullable Money paid,
            Money asked,
            @Nullable Integer visitsDone,
            @Nullable LocalDate lastVisit) {}

    /** What was known of one on the day of the take-over. */
    public record Known(
            LocalDate day,
            @Nullable Money paid,
            Money asked,
            @Nullable Integer visitsDone,
            @Nullable LocalDate lastVisit) {}

    @Inject
    EntityManager rows;

    @Inject
    AgroalDataSource datasource;

    @Inject
    Offers offers;

    @Inject
    Agreements agreements;

    @Inject
    Customers customers;

    @Inject
    Plans plans;

    @Inject
    Event<AgreementsTakenOver> takenOver;

    /** Takes them over; answers their ids in the same order. */
    public List<UUID> takeOver(List<InForce> running, LocalDate day) {
        if (running.isEmpty()) {
            return List.of();
        }
        List<Offer> made = offered(running, day);
        List<UUID> ids = agreements.offerAll(made);
        accept(ids, made);
        var rowsKept = ManyRows.into(
                "agreement_taken_over",
                "agreement_id uuid, day date, paid_minor bigint, asked_minor bigint, visits_done int, last_visit date");
        var facts = new ArrayList<TakenOver>();
        for (int at = 0; at < ids.size(); at++) {
            InForce one = running.get(at);
            Offer offer = made.get(at);
            rowsKept.add(
                    ids.get(at),
                    day,
                    one.paid() == null ? null : one.paid().minor(),
                    one.asked().minor(),
                    one.visitsDone(),
                    one.lastVisit());
            facts.add(new TakenOver(
                    ids.get(at),
                    one.homeId(),
                    offer.payerId(),
                    offer.term().from(),
                    offer.term().until(),
                    one.asked(),
                    one.visitsDone(),
                    one.lastVisit(),
                    offer.language()));
        }
        store(rowsKept);
        takenOver.fire(new AgreementsTakenOver(day, facts));
        return ids;
    }

    /** What was known of this agreement when it was taken over; empty for one that was sold here. */
    public Optional<Known> known(UUID agreementId) {
        return rows.createNativeQuery("""
                        select t.day, t.paid_minor, t.asked_minor, t.visits_done, t.last_visit, a.currency
                          from agreement_taken_over t
                          join agreement a on a.tenant_id = t.tenant_id and a.id = t.agreement_id
                         where t.agreement_id = :agreement""", Tuple.class)
                .setParameter("agreement", agreementId)
                .getResultStream()
                .map(row -> known((Tuple) row))
                .findFirst();
    }

    private static Known known(Tuple row) {
        Long paid = row.get(1, Long.class);
        String currency = String.valueOf(row.get(5));
        return new Known(
                row.get(0, LocalDate.class),
                paid == null ? null : Money.ofMinor(paid, currency),
                Money.ofMinor(row.get(2, Long.class), currency),
                row.get(3, Integer.class),
                row.get(4, LocalDate.class));
    }

    private List<Offer> offered(List<InForce> running, LocalDate day) {
        Map<String, Plan> known = plans.all().stream().collect(Collectors.toMap(Plan::code, Function.identity()));
        Map<UUID, Offer> byHome = new java.util.HashMap<>();
        running.stream().collect(Collectors.groupingBy(InForce::plan)).forEach((code, together) -> {
            Plan plan = Optional.ofNullable(known.get(code))
                    .orElseThrow(() ->
                            Refusal.of("agreement.plan-unknown").at("plan").thrown());
            Map<UUID, LocalDate> from = together.stream().collect(Collectors.toMap(InForce::homeId, InForce::from));
            offers.inForce(plan, from, day).forEach(offer -> byHome.put(offer.homeId(), offer));
        });
        return running.stream()
                .map(one -> at(one.price(), Objects.requireNonNull(byHome.get(one.homeId()))))
                .toList();
    }

    /** Offered and answered on its first day, or on the take-over for one that has not begun. */
    private static Offer at(Money price, Offer made) {
        LocalDate said =
                made.term().from().isBefore(made.offeredOn()) ? made.term().from() : made.offeredOn();
        return new Offer(
                made.homeId(),
                made.signerId(),
                made.payerId(),
                made.planId(),
                made.plan(),
                made.term(),
                price,
                made.language(),
                said,
                said,
                null,
                made.units(),
                made.promises(),
                made.parts());
    }

    private void accept(List<UUID> ids, List<Offer> made) {
        Map<UUID, String> names = customers
                .all(made.stream().map(Offer::signerId).collect(Collectors.toSet()))
                .stream()
                .collect(Collectors.toMap(Customer::id, Customer::name));
        var acceptances = ManyRows.into(
                "agreement_acceptance",
                "agreement_id uuid, day date, by_name text, channel text, paid_by_card boolean");
        for (int at = 0; at < ids.size(); at++) {
            Offer offer = made.get(at);
            acceptances.add(
                    ids.get(at),
                    offer.offeredOn(),
                    names.getOrDefault(offer.signerId(), "?"),
                    SaleChannel.COUNTER.code(),
                    false);
        }
        store(acceptances);
    }

    private void store(ManyRows many) {
        try (var connection = datasource.getConnection()) {
            many.store(connection);
        } catch (SQLException cause) {
            throw new IllegalStateException("the agreements could not be taken over", cause);
        }
    }
}
