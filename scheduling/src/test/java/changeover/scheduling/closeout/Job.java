package changeover.scheduling.closeout;

import changeover.contracts.catalogue.Band;
import changeover.contracts.catalogue.Cadence;
import changeover.contracts.catalogue.CatalogueJson;
import changeover.contracts.catalogue.ReadingSpec;
import changeover.contracts.catalogue.Task;
import changeover.contracts.catalogue.TicketNeeded;
import changeover.contracts.catalogue.Who;
import changeover.contracts.customers.AllEquipment;
import changeover.contracts.customers.Equipment;
import changeover.contracts.words.Wording;
import changeover.scheduling.Shop;
import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.KnownPart.Amount;
import changeover.scheduling.stock.Parts;
import changeover.scheduling.stock.Stock;
import changeover.scheduling.stock.StockPlaces;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A home with a furnace and a visit of three tasks, and a van with filters and pads: for the tests of close-out. */
@ApplicationScoped
public class Job {

    static final String FILTER = "filter-16x25x4";
    static final String PAD = "pad-35";
    static final Instant NINE = Instant.parse("2026-10-14T13:00:00Z");

    @Inject
    Shop shop;

    @Inject
    AllEquipment equipment;

    @Inject
    Parts parts;

    @Inject
    Stock stock;

    @Inject
    StockPlaces places;

    @Inject
    EntityManager rows;

    /** What a test works with. */
    record At(UUID tenant, UUID home, UUID furnace, UUID visit, UUID amps, UUID filter, UUID drain, UUID van) {}

    At open() {
        UUID tenant = shop.open("CA-QC");
        return shop.in(tenant, () -> {
            parts.keep(new KnownPart(FILTER, new Wording("Filter", "Filtre"), "H87", "filter", "16x25x4"));
            parts.keep(new KnownPart(PAD, new Wording("Pad", "Tampon"), "H87", "humidifier-pad", "35"));
            UUID van = places.van(Shop.TECHNICIAN).orElseThrow().id();
            stock.receive(
                    UUID.randomUUID(),
                    van,
                    List.of(new Amount(FILTER, BigDecimal.TEN), new Amount(PAD, BigDecimal.TWO)),
                    null);
            return visit(tenant, shop.home("QC"), van);
        });
    }

    At visit(UUID tenant, UUID home, UUID van) {
        UUID furnace = equipment
                .addToHome(
                        home,
                        new Equipment.Facts(
                                null,
                                "test-furnace",
                                "furnace " + UUID.randomUUID(),
                                null,
                                null,
                                null,
                                null,
                                null,
                                null,
                                null,
                                null,
                                null,
                                Map.of("size", "16x25x4"),
                                Map.of("kw", "5", "volts", "240")))
                .id();
        return visit(tenant, home, furnace, van);
    }

    At visit(UUID tenant, UUID home, UUID furnace, UUID van) {
        UUID visit = UUID.randomUUID();
        rows.createNativeQuery("""
                        insert into visit (id, home_id, kind, window_from, window_until, minutes)
                        values (:id, :home, 'plan', date '2026-09-01', date '2026-11-16', 60)
                        """)
                .setParameter("id", visit)
                .setParameter("home", home)
                .executeUpdate();
        return new At(
                tenant,
                home,
                furnace,
                visit,
                task(visit, furnace, AMPS),
                task(visit, furnace, FILTERS),
                task(visit, null, DRAIN),
                van);
    }

    private UUID task(UUID visit, @Nullable UUID machine, Task task) {
        UUID id = UUID.randomUUID();
        rows.createNativeQuery("""
                        insert into visit_task (id, visit_id, equipment_id, task_code, wording_en, wording_fr, who,
                          ticket, minutes, due_from, due_until, reason_en, reason_fr, basis, body)
                        values (:id, :visit, cast(:machine as uuid), :code, :en, :fr, 'technician',
                          cast(:ticket as text), 20, date '2026-09-01', date '2026-11-16', 'season', 'saison',
                          'common practice', cast(:body as jsonb))
                        """)
                .setParameter("id", id)
                .setParameter("visit", visit)
                .setParameter("machine", machine == null ? null : machine.toString())
                .setParameter("code", task.code())
                .setParameter("en", task.wording().en())
                .setParameter("fr", task.wording().fr())
                .setParameter("ticket", task.ticket().kind().orElse(null))
                .setParameter("body", CatalogueJson.write(task))
                .executeUpdate();
        return id;
    }

    void appoint(At at, LocalDate day) {
        rows.createNativeQuery("""
                        insert into appointment (visit_id, technician_id, day, starts, ends)
                        values (:visit, :technician, :day, time '09:00', time '10:00')
                        """)
                .setParameter("visit", at.visit())
                .setParameter("technician", Shop.TECHNICIAN)
                .setParameter("day", day)
                .executeUpdate();
    }

    /** One operation, with an id of its own. */
    static SentOperation say(int sequence, Operation operation) {
        return SentOperation.of(UUID.randomUUID(), "phone", sequence, NINE.plusSeconds(60L * sequence), operation);
    }

    private static final ReadingSpec VOLTS = spec("volts", "V", null);
    private static final ReadingSpec AMPERES =
            spec("amps", "A", new Band.ElementAmps("kw", "volts", "volts", BigDecimal.TEN));
    private static final Task AMPS = task("test-amps", TicketNeeded.NONE, List.of(VOLTS, AMPERES), List.of());
    private static final Task FILTERS = task(
            "test-filter-change",
            TicketNeeded.NONE,
            List.of(),
            List.of(new Task.PartUse("filter", BigDecimal.ONE, true)));
    private static final Task DRAIN = task(
            "test-drain",
            TicketNeeded.NONE,
            List.of(new ReadingSpec(
                    "ran-freely",
                    new Wording("Ran freely", "S’écoule"),
                    ReadingSpec.Form.YES_NO,
                    null,
                    null,
                    new Band.Answer(true),
                    null,
                    new Wording("clear it", "déboucher"),
                    null,
                    null)),
            List.of());

    private static ReadingSpec spec(String code, String unit, @Nullable Band band) {
        return new ReadingSpec(
                code,
                new Wording(code, code),
                ReadingSpec.Form.NUMBER,
                unit,
                null,
                band,
                null,
                new Wording("look at it", "à voir"),
                null,
                null);
    }

    private static Task task(String code, TicketNeeded ticket, List<ReadingSpec> readings, List<Task.PartUse> uses) {
        return new Task(
                code,
                List.of("test-furnace"),
                Map.of(),
                new Wording(code + " done", code + " fait"),
                Who.TECHNICIAN,
                ticket,
                20,
                Cadence.EachSeason.of("heating"),
                null,
                readings,
                uses,
                null,
                Task.COMMON_PRACTICE,
                null);
    }
}
