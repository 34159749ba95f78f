package changeover.contracts.customers;

import changeover.contracts.catalogue.OwnKinds;
import changeover.contracts.tenants.Ids;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.FilledOn;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refused;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.LockModeType;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** All equipment of the current business's homes and buildings. */
@ApplicationScoped
public class AllEquipment {

    private static final String ORDER = " order by position, name, id";

    private static final String PROMISED_OR_FOLLOWED = """
            select exists (select from own_interval where tenant_id = current_tenant() and equipment_id = :id)
                or exists (select from agreement_unit where tenant_id = current_tenant() and equipment_id = :id)
                or exists (select from equipment where tenant_id = current_tenant() and follows_id = :id)
            """;

    @Inject
    EntityManager rows;

    @Inject
    OwnKinds kinds;

    @Inject
    Today today;

    @Inject
    Event<EquipmentEnded> ended;

    public Equipment addToHome(UUID homeId, Equipment.Facts facts) {
        return addToHome(Ids.next(), homeId, facts);
    }

    /** The same under an id that was made where the machine was found. */
    public Equipment addToHome(UUID id, UUID homeId, Equipment.Facts facts) {
        check(facts);
        return store(Equipment.inHome(id, homeId, facts, ofHome(homeId).size() + 1));
    }

    /** Common equipment, which belongs to the building. */
    public Equipment addToBuilding(UUID buildingId, Equipment.Facts facts) {
        check(facts);
        return store(
                Equipment.inBuilding(buildingId, facts, ofBuilding(buildingId).size() + 1));
    }

    /** Everything that may not be written of such a machine; empty when all is well. */
    public List<Refusal> refusals(Equipment.Facts facts) {
        var refusals = new ArrayList<>(KindFacts.refusals(kinds.find(facts.kind()), facts));
        refusals.addAll(Equipment.refusals(facts));
        return refusals;
    }

    private void check(Equipment.Facts facts) {
        List<Refusal> refusals = KindFacts.refusals(kinds.find(facts.kind()), facts);
        if (!refusals.isEmpty()) {
            throw new Refused(refusals);
        }
    }

    private Equipment store(Equipment unit) {
        rows.persist(unit);
        rows.flush();
        return unit;
    }

    /** The machine is taken out that day: what was promised for it goes with it. Empty when there is none of that id here. */
    public Optional<Equipment> takeOut(UUID id, LocalDate day) {
        Optional<Equipment> found = get(id);
        found.ifPresent(unit -> {
            come(day);
            end(unit, day);
        });
        return found;
    }

    /** Its work falls at once, so a machine that will go only later is taken out on its day. */
    private void come(LocalDate day) {
        if (day.isAfter(today.day())) {
            throw Refusal.of("equipment.ended-to-come").at("day").thrown();
        }
    }

    private void end(Equipment unit, LocalDate day) {
        unit.end(day);
        rows.flush();
        ended.fire(new EquipmentEnded(unit.id(), day));
    }

    /** The machine is taken out that day and another takes its place; empty when there is none of that id here. */
    public Optional<Equipment> replace(UUID id, Equipment.Facts facts, LocalDate day) {
        check(facts);
        return get(id).map(old -> {
            come(day);
            end(old, day);
            Equipment next = old.homeId()
                    .map(home -> Equipment.inHome(Ids.next(), home, facts, old.position()))
                    .orElseGet(() -> Equipment.inBuilding(old.buildingId().orElseThrow(), facts, old.position()));
            next.follow(id);
            return store(next);
        });
    }

    /**
     * A machine that was written down by mistake goes; one of which something is kept is taken out instead.
     *
     * @param spokenOf whether something beyond the register speaks of it
     */
    public void takeBack(UUID id, boolean spokenOf, LocalDate day) {
        get(id).filter(unit -> unit.endedOn().isEmpty()).ifPresent(unit -> {
            boolean kept = spokenOf
                    || (boolean) rows.createNativeQuery(PROMISED_OR_FOLLOWED, Boolean.class)
                            .setParameter("id", id)
                            .getSingleResult();
            if (kept) {
                end(unit, day);
            } else {
                rows.remove(unit);
            }
            rows.flush();
        });
    }

    /** Writes a machine's facts anew; empty when there is none of that id here. */
    public Optional<Equipment> rewrite(UUID id, Equipment.Facts facts, FilledOn form) {
        check(facts);
        Optional<Equipment> found = Optional.ofNullable(rows.find(Equipment.class, id, LockModeType.PESSIMISTIC_WRITE));
        found.ifPresent(unit -> {
            unit.rewrite(facts, form);
            rows.flush();
        });
        return found;
    }

    public Optional<Equipment> get(UUID id) {
        return Optional.ofNullable(rows.find(Equipment.class, id));
    }

    public List<Equipment> all(Collection<UUID> ids) {
        return rows.createQuery("from Equipment where id in :ids" + ORDER, Equipment.class)
                .setParameter("ids", ids)
                .getResultList();
    }

    /** The machines with this serial number that stand somewhere today; two makers may use the same one. */
    public List<Equipment> ofSerial(String serial) {
        return rows.createQuery("from Equipment where serial = :serial and endedOn is null" + ORDER, Equipment.class)
                .setParameter("serial", serial)
                .getResultList();
    }

    /** What stands in the home today, its own only. */
    public List<Equipment> ofHome(UUID homeId) {
        return ofHomes(List.of(homeId));
    }

    /** What stands in these homes today, of each its own only. */
    public List<Equipment> ofHomes(Collection<UUID> homeIds) {
        return rows.createQuery("from Equipment where homeId in :homes and endedOn is null" + ORDER, Equipment.class)
                .setParameter("homes", homeIds)
                .getResultList();
    }

    /** What serves the building in common today. */
    public List<Equipment> ofBuilding(UUID buildingId) {
        return rows.createQuery(
                        "from Equipment where buildingId = :building and endedOn is null" + ORDER, Equipment.class)
                .setParameter("building", buildingId)
                .getResultList();
    }

    /** What once stood in the home and was taken out. */
    public List<Equipment> takenOutOf(UUID homeId) {
        return rows.createQuery(
                        "from Equipment where homeId = :home and endedOn is not null order by endedOn desc, id",
                        Equipment.class)
                .setParameter("home", homeId)
                .getResultList();
    }
}
