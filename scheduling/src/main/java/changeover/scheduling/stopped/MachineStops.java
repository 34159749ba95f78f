package changeover.scheduling.stopped;

import changeover.contracts.customers.AllEquipment;
import changeover.contracts.customers.Equipment;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Checks;
import changeover.contracts.words.Refusal;
import changeover.scheduling.closeout.NotToBeUsedFound;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Machines of the current business's homes are stopped: by anybody, with or without the ticket, and told at once. */
@ApplicationScoped
public class MachineStops {

    private static final String INSERT = """
            insert into machine_stop (id, home_id, equipment_id, visit_id, finding_id, person_id, at, day, sentence_code, seen,
              language, shut_off, ticket, place)
            values (:id, :home, cast(:machine as uuid), cast(:visit as uuid), cast(:finding as uuid), :person, :at, :day,
              cast(:sentence as text), cast(:seen as text), cast(:language as text), cast(:shut as text), :ticket, :place)
            """;

    @Inject
    EntityManager rows;

    @Inject
    StopLists lists;

    @Inject
    Homes homes;

    @Inject
    AllEquipment equipment;

    @Inject
    Today today;

    @Inject
    Event<MachinesStopped> stopped;

    /** Whose word it is, when it was said, and of which day. */
    private record Said(
            UUID by,
            Instant at,
            LocalDate day,
            @Nullable UUID finding,
            @Nullable String sentence) {}

    /** Somebody stops a machine. The same id again gives the stop that is there. */
    public MachineStop stop(UUID id, NewStop facts, UUID by) {
        Optional<MachineStop> before = lists.find(id);
        if (before.isPresent()) {
            return before.get();
        }
        var checks = new Checks();
        if (checks.note("seen", facts.seen()) == null) {
            checks.refuse("seen", Refusal.of("stopped.what-was-seen"));
        }
        String shutOff = checks.note("shutOff", facts.shutOff());
        checks.orRefuse();
        Home home = homes.get(facts.homeId())
                .orElseThrow(() -> Refusal.of("stopped.home-unknown").thrown());
        UUID machine = facts.equipmentId();
        Equipment of = machine == null
                ? null
                : machines(home).stream()
                        .filter(one -> one.id().equals(machine))
                        .findFirst()
                        .orElseThrow(() -> Refusal.of("closeout.equipment-not-found")
                                .at("equipment")
                                .thrown());
        insert(id, facts, shutOff, home, of, new Said(by, today.now(), today.day(), null, null));
        stopped.fire(new MachinesStopped(List.of(id)));
        return lists.find(id).orElseThrow();
    }

    /** The home's own machines, then those that serve the whole building. */
    private List<Equipment> machines(Home home) {
        return Stream.concat(
                        equipment.ofHome(home.id()).stream(),
                        home.buildingId().stream().flatMap(building -> equipment.ofBuilding(building).stream()))
                .toList();
    }

    /** What a visit found. Each finding stops once. */
    void stop(NotToBeUsedFound found) {
        Home home = homes.get(found.homeId()).orElseThrow();
        Map<UUID, Equipment> machines = equipment
                .all(found.findings().stream()
                        .map(NotToBeUsedFound.Seen::equipmentId)
                        .filter(Objects::nonNull)
                        .toList())
                .stream()
                .collect(Collectors.toMap(Equipment::id, Function.identity(), (one, _) -> one));
        List<UUID> fresh = new ArrayList<>();
        for (NotToBeUsedFound.Seen seen : found.findings()) {
            UUID id = UUID.randomUUID();
            insert(
                    id,
                    new NewStop(
                            found.homeId(),
                            seen.equipmentId(),
                            found.visitId(),
                            seen.text() == null ? "" : seen.text(),
                            seen.language() == null ? "" : seen.language(),
                            null,
                            seen.ticket()),
                    null,
                    home,
                    seen.equipmentId() == null ? null : machines.get(seen.equipmentId()),
                    new Said(seen.by(), seen.at(), found.day(), seen.id(), seen.sentence()));
            fresh.add(id);
        }
        stopped.fire(new MachinesStopped(fresh));
    }

    private void insert(
            UUID id, NewStop facts, @Nullable String shutOff, Home home, @Nullable Equipment machine, Said said) {
        UUID finding = said.finding();
        UUID visit = facts.visitId();
        rows.createNativeQuery(INSERT)
                .setParameter("id", id)
                .setParameter("home", home.id())
                .setParameter("machine", machine == null ? null : machine.id().toString())
                .setParameter("visit", visit == null ? null : visit.toString())
                .setParameter("finding", finding == null ? null : finding.toString())
                .setParameter("person", said.by())
                .setParameter("at", said.at())
                .setParameter("day", said.day())
                .setParameter("sentence", said.sentence())
                .setParameter(
                        "seen", facts.seen().isBlank() ? null : facts.seen().strip())
                .setParameter("language", facts.seen().isBlank() ? null : facts.language())
                .setParameter("shut", shutOff)
                .setParameter(
                        "ticket",
                        RestoringTicket.of(facts.ticket(), said.sentence(), machine == null ? null : machine.kind()))
                .setParameter("place", place(home))
                .executeUpdate();
    }

    /** {@code CA} and {@code on}, or {@code CA-ON} alone, are both {@code CA-ON}. */
    private static String place(Home home) {
        String region = home.region().strip().toUpperCase(Locale.ROOT);
        return region.matches("[A-Z]{2}-.+") ? region : home.facts().country().toUpperCase(Locale.ROOT) + "-" + region;
    }
}
