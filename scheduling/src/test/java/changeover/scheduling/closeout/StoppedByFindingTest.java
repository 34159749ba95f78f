package changeover.scheduling.closeout;

import static changeover.scheduling.closeout.Job.say;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Ticket;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refused;
import changeover.scheduling.Shop;
import changeover.scheduling.closeout.Job.At;
import changeover.scheduling.closeout.Operation.Found;
import changeover.scheduling.closeout.Operation.TakeBack;
import changeover.scheduling.stopped.HeatAnswer;
import changeover.scheduling.stopped.MachineStop;
import changeover.scheduling.stopped.MachineStops;
import changeover.scheduling.stopped.NewStop;
import changeover.scheduling.stopped.StopDeeds;
import changeover.scheduling.stopped.StopEnd;
import changeover.scheduling.stopped.StopLists;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

/** What was found not to be used is stopped at once and stays stopped until the ticket says otherwise. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class StoppedByFindingTest {

    @Inject
    Job job;

    @Inject
    Shop shop;

    @Inject
    CloseOut closeOut;

    @Inject
    Amendments amendments;

    @Inject
    Findings findings;

    @Inject
    MachineStops stops;

    @Inject
    StopDeeds deeds;

    @Inject
    StopLists lists;

    @Inject
    People people;

    @Inject
    Today today;

    @Inject
    EntityManager rows;

    private <T> T in(At at, Supplier<T> work) {
        return shop.in(at.tenant(), work::get);
    }

    private void run(At at, Runnable work) {
        in(at, () -> {
            work.run();
            return true;
        });
    }

    private void refused(At at, String code, Runnable work) {
        assertEquals(
                code, assertThrows(Refused.class, () -> run(at, work)).first().code());
    }

    private static SentOperation cracked(At at) {
        return say(
                20,
                new Found(
                        "do_not_use",
                        null,
                        "Cracked exchanger.",
                        "en",
                        at.furnace(),
                        null,
                        "Mara Quill",
                        false,
                        null,
                        "gas"));
    }

    private MachineStop only(At at) {
        return in(at, () -> {
            List<MachineStop> all = lists.open();
            assertEquals(1, all.size());
            return all.getFirst();
        });
    }

    @Test
    void a_finding_stops_the_machine_before_the_visit_is_closed_and_once() {
        At at = job.open();
        SentOperation said = cracked(at);
        in(at, () -> closeOut.applyWhole(at.visit(), List.of(said), Shop.TECHNICIAN));
        MachineStop stop = only(at);
        assertEquals(at.furnace(), stop.equipmentId());
        assertEquals("Cracked exchanger.", stop.seen());
        assertEquals("gas", stop.ticket());
        assertEquals("CA-QC", stop.place());
        assertEquals("Ida Roe", stop.person());
        assertEquals(said.id(), stop.findingId());
        assertTrue(stop.asksForHeat());
        assertEquals(3, stop.owed().size());
        List<SentOperation> whole = CloseOutTest.whole(at);
        in(at, () -> closeOut.applyWhole(at.visit(), whole, Shop.TECHNICIAN));
        in(at, () -> closeOut.applyWhole(at.visit(), List.of(said), Shop.TECHNICIAN));
        assertEquals(stop.id(), only(at).id());
    }

    @Test
    void an_amendment_never_ends_it_and_may_begin_one() {
        At at = job.open();
        SentOperation said = cracked(at);
        in(at, () -> closeOut.applyWhole(at.visit(), List.of(said), Shop.TECHNICIAN));
        in(at, () -> closeOut.applyWhole(at.visit(), CloseOutTest.whole(at), Shop.TECHNICIAN));
        in(
                at,
                () -> amendments.amend(
                        UUID.randomUUID(),
                        at.visit(),
                        "typed at the wrong home",
                        List.of(say(30, new TakeBack(said.id()))),
                        Shop.TECHNICIAN));
        MachineStop stop = only(at);
        assertTrue(in(at, () -> findings.find(said.id())).isEmpty());
        run(at, () -> people.add(Ticket.of(Shop.TECHNICIAN, "gas", "G-1", null)));
        run(at, () -> deeds.end(stop.id(), StopEnd.IN_SERVICE, "It was another home's", Shop.TECHNICIAN));
        assertFalse(in(at, () -> lists.find(stop.id()).orElseThrow()).isOpen());
        in(
                at,
                () -> amendments.amend(
                        UUID.randomUUID(), at.visit(), "seen later", List.of(cracked(at)), Shop.TECHNICIAN));
        assertFalse(only(at).id().equals(stop.id()));
    }

    @Test
    void only_the_ticket_in_force_restores_and_the_finding_is_put_right_with_it() {
        At at = job.open();
        SentOperation said = cracked(at);
        in(at, () -> closeOut.applyWhole(at.visit(), List.of(said), Shop.TECHNICIAN));
        UUID stop = only(at).id();
        Runnable end = () -> deeds.end(stop, StopEnd.IN_SERVICE, "New exchanger, burner tested", Shop.TECHNICIAN);
        refused(at, "closeout.restore-ticket", end);
        run(at, () -> people.add(Ticket.of(Shop.TECHNICIAN, "electrical", "E-1", null)));
        refused(at, "closeout.restore-ticket", end);
        run(at, () -> people.hold(Shop.TECHNICIAN, "gas", "G-1", today.day().minusDays(1)));
        refused(at, "closeout.restore-ticket", end);
        assertThrows(
                RuntimeException.class,
                () -> run(
                        at,
                        () -> rows.createNativeQuery("""
                                insert into back_in_service (stop_id, how, person_id, ticket_kind, day, at, done)
                                values (:stop, 'in_service', :person, 'gas', current_date, now(), 'by hand')
                                """)
                                .setParameter("stop", stop)
                                .setParameter("person", Shop.TECHNICIAN)
                                .executeUpdate()),
                "the database asks for the ticket too");
        run(at, () -> people.hold(Shop.TECHNICIAN, "gas", "G-2", today.day()));
        refused(at, "stopped.what-was-done", () -> deeds.end(stop, StopEnd.IN_SERVICE, " ", Shop.TECHNICIAN));
        run(at, end);
        MachineStop over = in(at, () -> lists.find(stop).orElseThrow());
        MachineStop.Back back = over.back();
        assertNotNull(back);
        assertEquals("G-2", back.number());
        assertEquals("Ida Roe", back.person());
        assertTrue(
                in(at, () -> findings.find(said.id()).orElseThrow()).clearedOn().isPresent());
        refused(at, "constraint.a_stop_ends_once", end);
        assertEquals(0, (int) in(at, () -> lists.countOpen()));
        assertEquals(3, over.owed().size(), "what was owed is still owed");
    }

    @Test
    void anybody_stops_and_says_what_was_shut_off_and_what_heats_tonight() {
        At at = job.open();
        UUID id = UUID.randomUUID();
        NewStop facts =
                new NewStop(at.home(), at.furnace(), null, "Soot over the door", "en", "The switch beside it", "gas");
        MachineStop stop = in(at, () -> stops.stop(id, facts, Shop.TECHNICIAN));
        assertEquals(id, in(at, () -> stops.stop(id, facts, Shop.TECHNICIAN)).id());
        assertEquals(
                List.of("tag", "household-told"),
                stop.owed().stream().map(one -> one.duty().code()).toList());
        refused(
                at,
                "stopped.what-was-seen",
                () -> stops.stop(
                        UUID.randomUUID(),
                        new NewStop(at.home(), at.furnace(), null, " ", "en", null, null),
                        Shop.TECHNICIAN));
        refused(
                at,
                "closeout.equipment-not-found",
                () -> stops.stop(
                        UUID.randomUUID(),
                        new NewStop(at.home(), UUID.randomUUID(), null, "Soot", "en", null, null),
                        Shop.TECHNICIAN));
        run(at, () -> deeds.done(id, "tag", "Ida Roe", today.day(), null));
        refused(at, "stopped.duty-done", () -> deeds.done(id, "tag", "Ida Roe", today.day(), null));
        refused(at, "stopped.duty-unknown", () -> deeds.done(id, "flags", "Ida Roe", today.day(), null));
        refused(
                at,
                "stopped.duty-day",
                () -> deeds.done(id, "household-told", "Ida Roe", today.day().plusDays(1), null));
        var called = new HeatAnswer.Called("Mara Quill", Instant.parse("2026-11-30T20:00:00Z"));
        refused(
                at,
                "stopped.heat-tonight",
                () -> deeds.heat(id, new HeatAnswer(true, true, null, called, called), Shop.TECHNICIAN));
        run(
                at,
                () -> deeds.heat(
                        id, new HeatAnswer(true, true, "Two electric heaters", called, called), Shop.TECHNICIAN));
        MachineStop now = in(at, () -> lists.find(id).orElseThrow());
        MachineStop.Heat heat = now.heat();
        assertNotNull(heat);
        assertEquals("Two electric heaters", heat.answer().tonight());
        assertEquals(called, heat.answer().customer());
        assertFalse(now.asksForHeat());
        assertEquals(1, now.owed().size());
        assertEquals(1, in(at, () -> lists.openIn(List.of(at.home()))).size());
    }
}
