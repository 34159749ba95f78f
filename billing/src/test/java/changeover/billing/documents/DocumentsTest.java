package changeover.billing.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.ABusiness;
import changeover.contracts.PostgresForTests;
import changeover.contracts.words.Constraints;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class DocumentsTest {

    @Inject
    ABusiness business;

    @Inject
    Documents documents;

    @Inject
    DocumentsToMake toMake;

    @Test
    void a_paper_is_wanted_with_the_business_and_made_once_after_it() {
        UUID tenant = business.quebec();
        Wanted wanted = Wanted.of(PaperKind.ESTIMATE, UUID.randomUUID());
        business.in(tenant, () -> documents.order(List.of(wanted)));
        business.in(tenant, () -> documents.order(List.of(wanted)));
        assertTrue(business.in(tenant, () -> documents.newest(PaperKind.ESTIMATE, wanted.ofId()))
                .isEmpty());
        assertEquals(1, toMake.makePending(tenant, 500));
        assertEquals(0, toMake.makePending(tenant, 500));
        business.in(tenant, () -> documents.order(List.of(wanted)));
        assertEquals(0, toMake.makePending(tenant, 500));
        Document made = business.in(tenant, () -> documents.newest(PaperKind.ESTIMATE, wanted.ofId()))
                .orElseThrow();
        assertEquals("S-1.pdf", made.fileName());
        assertEquals(64, made.sha256().length());
        assertEquals(4, made.bytes().length);
    }

    @Test
    void a_corrected_thing_gets_a_second_version_and_the_first_stays() {
        UUID tenant = business.quebec();
        UUID id = UUID.randomUUID();
        business.in(
                tenant,
                () -> documents.order(
                        List.of(Wanted.of(PaperKind.ESTIMATE, id), new Wanted(PaperKind.ESTIMATE, id, 2))));
        assertEquals(
                2, toMake.newest(tenant, PaperKind.ESTIMATE, id).orElseThrow().version());
        assertTrue(business.in(tenant, () -> documents.find(PaperKind.ESTIMATE, id, 1))
                .isPresent());
    }

    @Test
    void one_that_cannot_be_drawn_waits_and_does_not_hold_up_the_others() {
        UUID tenant = business.quebec();
        Wanted bad = Wanted.of(PaperKind.ESTIMATE, UUID.randomUUID());
        PapersForTests.FAILING.add(bad.ofId());
        Wanted good = Wanted.of(PaperKind.ESTIMATE, UUID.randomUUID());
        business.in(tenant, () -> documents.order(List.of(bad, good)));
        assertEquals(1, toMake.makePending(tenant, 500));
        assertEquals("no ink", business.in(tenant, () -> business.one("select last_error from document_order")));
        assertEquals(0, toMake.makePending(tenant, 500));
        PapersForTests.FAILING.remove(bad.ofId());
        business.in(tenant, () -> business.execute("update document_order set next_try_at = now()"));
        assertEquals(1, toMake.makePending(tenant, 500));
    }

    @Test
    void four_at_once_make_each_paper_once() throws Exception {
        UUID tenant = business.quebec();
        List<Wanted> wanted = new ArrayList<>();
        for (int count = 0; count < 450; count++) {
            wanted.add(Wanted.of(PaperKind.ESTIMATE, UUID.randomUUID()));
        }
        business.in(tenant, () -> documents.order(wanted));
        int before = PapersForTests.DRAWN.get();
        try (var workers = Executors.newFixedThreadPool(4)) {
            List<Future<Integer>> made = new ArrayList<>();
            for (int worker = 0; worker < 4; worker++) {
                made.add(workers.submit(() -> toMake.makePending(tenant, 500)));
            }
            int sum = 0;
            for (Future<Integer> each : made) {
                sum += each.get();
            }
            sum += toMake.makePending(tenant, 500);
            assertEquals(450, sum);
        }
        assertEquals(450, PapersForTests.DRAWN.get() - before);
        assertEquals("450", business.in(tenant, () -> business.one("select count(*) from document")));
    }

    @Test
    void a_document_never_changes() {
        UUID tenant = business.quebec();
        Wanted wanted = Wanted.of(PaperKind.ESTIMATE, UUID.randomUUID());
        business.in(tenant, () -> documents.order(List.of(wanted)));
        toMake.makePending(tenant, 1);
        RuntimeException refused = assertThrows(
                RuntimeException.class,
                () -> business.in(tenant, () -> business.execute("update document set file_name = 'x'")));
        assertTrue(
                Constraints.name(refused).isPresent() || refused.toString().contains("document"), refused.toString());
    }
}
