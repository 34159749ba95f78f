package changeover.scheduling.closeout;

import static changeover.scheduling.closeout.Job.say;
import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.catalogue.FindingLevel;
import changeover.contracts.catalogue.Standing;
import changeover.contracts.customers.AccessCodes;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refused;
import changeover.scheduling.Shop;
import changeover.scheduling.closeout.Job.At;
import changeover.scheduling.closeout.Operation.Found;
import changeover.scheduling.closeout.Operation.Measured;
import changeover.scheduling.closeout.Operation.Photographed;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.function.Supplier;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class ReportTest {

    @Inject
    Job job;

    @Inject
    Shop shop;

    @Inject
    CloseOut closeOut;

    @Inject
    Amendments amendments;

    @Inject
    Reports reports;

    @Inject
    DaySheets days;

    @Inject
    Findings findings;

    @Inject
    FollowUps followUps;

    @Inject
    UnitHistory history;

    @Inject
    Photos photos;

    @Inject
    AccessCodes codes;

    @Inject
    Today today;

    private <T> T in(At at, Supplier<T> work) {
        return shop.in(at.tenant(), work::get);
    }

    private List<OperationAnswer> apply(At at, List<SentOperation> sent) {
        return in(at, () -> closeOut.applyWhole(at.visit(), sent, Shop.TECHNICIAN));
    }

    /** A good close-out, with these said before it is closed. */
    private static List<SentOperation> with(At at, SentOperation... more) {
        List<SentOperation> all = new ArrayList<>(CloseOutTest.whole(at));
        all.addAll(all.size() - 1, List.of(more));
        List<SentOperation> numbered = new ArrayList<>();
        for (SentOperation one : all) {
            numbered.add(new SentOperation(one.id(), "phone", numbered.size(), one.at(), null, one.kind(), one.body()));
        }
        return numbered;
    }

    @Test
    void the_report_says_what_was_read_found_done_and_used() throws Exception {
        At at = job.open();
        byte[] png = png();
        String sha256 = in(at, () -> photos.store(png, null));
        assertEquals(sha256, in(at, () -> photos.store(png, sha256)), "kept once");
        SentOperation finding = say(
                20,
                new Found("urgent", null, "Rouille au bas.", "fr", at.furnace(), at.amps(), null, null, null, null));
        apply(
                at,
                with(
                        at,
                        finding,
                        say(21, new Photographed(sha256, finding.id(), null, "le bas")),
                        say(22, new Measured(at.drain(), "ran-freely", "no", null, null, null))));

        ReportFacts facts = in(at, () -> reports.of(at.visit()));
        assertEquals(1, facts.version());
        assertEquals(55, facts.minutes());
        assertEquals("Ida Roe", facts.technician().name());
        assertEquals(
                List.of(Outcome.DONE, Outcome.DONE, Outcome.DEFERRED),
                facts.tasks().stream()
                        .map(ReportFacts.TaskFact::outcome)
                        .sorted()
                        .toList());
        assertEquals(2, facts.findings().size());
        ReportFacts.FindingFact rust = facts.findings().stream()
                .filter(found -> found.level() == FindingLevel.URGENT)
                .findFirst()
                .orElseThrow();
        assertEquals("Rouille au bas.", rust.in("en"), "free words stay in their own language");
        assertTrue(rust.photos().getFirst().there());
        assertTrue(in(at, () -> photos.picture(sha256)).orElseThrow().width() > 0);
        ReportFacts.ReadingFact drain = facts.readings().stream()
                .filter(read -> read.code().equals("ran-freely"))
                .findFirst()
                .orElseThrow();
        assertEquals(Standing.BELOW, drain.standing());
        assertEquals("clear it", requireNonNull(drain.beyond()).en());
        assertNull(facts.next());
        assertEquals("Filter", facts.parts().getFirst().name().en());

        in(
                at,
                () -> amendments.amend(
                        UUID.randomUUID(),
                        at.visit(),
                        "typed wrong",
                        List.of(say(1, new Operation.MinutesTold(45, 0, null))),
                        Shop.TECHNICIAN));
        ReportFacts second = in(at, () -> reports.of(at.visit()));
        assertEquals(2, second.version());
        assertEquals(45, second.minutes());
        assertEquals("typed wrong", requireNonNull(second.correction()).why());
        assertEquals(2, in(at, () -> followUps.open()).size());
        assertEquals(2, in(at, () -> history.ofHome(at.home())).size());
    }

    @Test
    void the_day_is_one_document_with_limits_last_readings_and_codes_on_the_day_only() throws Exception {
        At at = job.open();
        apply(at, CloseOutTest.whole(at));
        At next = in(at, () -> job.visit(at.tenant(), at.home(), at.furnace(), at.van()));
        LocalDate day = in(at, () -> today.day());
        in(at, () -> {
            job.appoint(next, day);
            codes.add(at.home(), "code", "front door", "1234#");
            return true;
        });
        DaySheet sheet = in(at, () -> days.of(Shop.TECHNICIAN, day));
        DaySheet.Stop stop = sheet.stops().getFirst();
        assertEquals("1234#", stop.codes().getFirst().secret());
        assertEquals(3, stop.tasks().size());
        DaySheet.ReadingLine amps = stop.tasks().stream()
                .flatMap(task -> task.readings().stream())
                .filter(reading -> reading.spec().code().equals("amps"))
                .findFirst()
                .orElseThrow();
        assertEquals("19,5", requireNonNull(amps.last()).entered());
        assertEquals(1, stop.openFindings().size());
        assertFalse(sheet.sentences().isEmpty());
        assertFalse(sheet.cautions().isEmpty());
        assertEquals(2, sheet.parts().size());
        String json = new ObjectMapper().registerModule(new JavaTimeModule()).writeValueAsString(sheet);
        assertTrue(json.contains("element-amps"), "limits are data");
        LocalDate tomorrow = day.plusDays(1);
        assertEquals(List.of(), in(at, () -> days.of(Shop.TECHNICIAN, tomorrow)).stops());
    }

    @Test
    void what_is_not_to_be_used_is_put_right_only_where_it_was_stopped() {
        At at = job.open();
        SentOperation stop = say(
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
        apply(at, with(at, stop));
        assertEquals(
                "do_not_use",
                in(at, () -> findings.openIn(at.home())).getFirst().level());
        Refused refused = assertThrows(
                Refused.class,
                () -> in(at, () -> {
                    findings.clear(stop.id(), "exchanger replaced", Shop.TECHNICIAN);
                    return true;
                }));
        assertEquals("closeout.finding-is-stopped", refused.first().code());
        assertEquals(1, in(at, () -> findings.notToBeUsed()).size());
    }

    private static byte[] png() throws Exception {
        var out = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB), "png", out);
        return out.toByteArray();
    }
}
