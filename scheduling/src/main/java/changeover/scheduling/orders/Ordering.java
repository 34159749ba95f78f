package changeover.scheduling.orders;

import changeover.contracts.customers.AllEquipment;
import changeover.contracts.customers.Equipment;
import changeover.contracts.customers.Homes;
import changeover.contracts.merging.HomeMerges;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refused;
import changeover.scheduling.stock.Parts;
import changeover.scheduling.stock.Supplies;
import changeover.scheduling.visits.Visit;
import changeover.scheduling.visits.VisitEnd;
import changeover.scheduling.visits.Visits;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;

/** A part is ordered for a visit that is being made or was kept, from somebody, to be here on a day. */
@ApplicationScoped
class Ordering {

    private static final BigDecimal MOST = BigDecimal.valueOf(9999);

    @Inject
    EntityManager rows;

    @Inject
    Visits visits;

    @Inject
    Homes homes;

    @Inject
    HomeMerges merges;

    @Inject
    AllEquipment equipment;

    @Inject
    Parts parts;

    @Inject
    Supplies supplies;

    /** @param today the latest day on which it can have been ordered, and the day where none is said */
    void order(UUID id, NewOrder facts, LocalDate today) {
        LocalDate said = facts.orderedOn();
        LocalDate day = said == null ? today : said;
        Visit visit = visits.find(facts.visitId())
                .orElseThrow(() -> Refusal.of("visit.unknown").thrown());
        String supplier = facts.supplier().isBlank()
                ? supplies.suppliers().getOrDefault(facts.partCode(), "")
                : facts.supplier().strip();
        List<Refusal> refusals = refusals(visit, facts, supplier, day);
        if (day.isAfter(today)) {
            refusals.add(Refusal.of("part-order.ordered-ahead").at("ordered"));
        }
        if (!refusals.isEmpty()) {
            throw new Refused(refusals);
        }
        UUID machine = facts.equipmentId();
        rows.createNativeQuery("""
                        insert into part_order (id, visit_id, home_id, equipment_id, part_code, quantity, supplier, ordered_on,
                          expected_on, words)
                        values (:id, :visit, :home, cast(:machine as uuid), :part, :quantity, :supplier, :ordered, :expected,
                          cast(:words as text))
                        """)
                .setParameter("id", id)
                .setParameter("visit", visit.id())
                .setParameter("home", merges.living(visit.homeId()))
                .setParameter("machine", machine == null ? null : machine.toString())
                .setParameter("part", facts.partCode())
                .setParameter("quantity", facts.quantity())
                .setParameter("supplier", supplier)
                .setParameter("ordered", day)
                .setParameter("expected", facts.expectedOn())
                .setParameter("words", facts.words())
                .executeUpdate();
    }

    private List<Refusal> refusals(Visit visit, NewOrder facts, String supplier, LocalDate day) {
        List<Refusal> refusals = new ArrayList<>();
        if (visits.ending(visit.id())
                .filter(end -> end.how() != VisitEnd.CLOSED)
                .isPresent()) {
            refusals.add(Refusal.of("part-order.visit-not-kept"));
        }
        if (parts.find(facts.partCode()).isEmpty()) {
            refusals.add(Refusal.of("stock.part-not-found").at("part"));
        }
        if (facts.quantity().signum() <= 0
                || facts.quantity().compareTo(MOST) > 0
                || facts.quantity().stripTrailingZeros().scale() > 4) {
            refusals.add(Refusal.of("stock.quantity").at("quantity"));
        }
        if (supplier.isEmpty()) {
            refusals.add(Refusal.of("part-order.from-whom").at("supplier"));
        }
        if (facts.expectedOn().isBefore(day)) {
            refusals.add(Refusal.of("part-order.expected-before").at("expected"));
        }
        UUID machine = facts.equipmentId();
        if (machine != null
                && machines(merges.living(visit.homeId()))
                        .noneMatch(one -> one.id().equals(machine))) {
            refusals.add(Refusal.of("closeout.equipment-not-found").at("equipment"));
        }
        return refusals;
    }

    /** The home's own and those of its building. */
    private Stream<Equipment> machines(UUID home) {
        return Stream.concat(
                equipment.ofHome(home).stream(),
                homes.get(home).flatMap(one -> one.buildingId()).stream()
                        .flatMap(building -> equipment.ofBuilding(building).stream()));
    }
}
