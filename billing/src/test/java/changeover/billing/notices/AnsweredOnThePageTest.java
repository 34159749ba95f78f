package changeover.billing.notices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class AnsweredOnThePageTest {

    private static final UUID CUSTOMER = UUID.randomUUID();

    /** Opens a page for one customer only. */
    @ApplicationScoped
    static class PageOfOne implements OwnPage {
        @Override
        public Optional<String> openedFor(UUID customer) {
            return customer.equals(CUSTOMER) ? Optional.of("https://changeover.example.com/yours/S") : Optional.empty();
        }
    }

    @Inject
    AnsweredOnThePage page;

    private static MailTurns.Turn turn(String kind, String language, @Nullable UUID customer) {
        return new MailTurns.Turn(
                UUID.randomUUID(),
                "<1@example.com>",
                "Ida Roe",
                "ida@example.com",
                language,
                "Re",
                "Words.",
                1,
                kind,
                customer);
    }

    @Test
    void what_asks_for_a_yes_ends_with_the_customers_own_page() {
        for (String kind : new String[] {"estimate", "estimate-more"}) {
            String english = page.body(turn(kind, "en", CUSTOMER));
            assertTrue(english.startsWith("Words.\n"), english);
            assertTrue(english.contains("\nhttps://changeover.example.com/yours/S\n"), english);
            assertTrue(page.body(turn(kind, "fr", CUSTOMER)).contains("votre propre page\u00a0:\nhttps://"), kind);
        }
    }

    @Test
    void nothing_else_does_and_nothing_where_there_is_no_address() {
        assertEquals("Words.", page.body(turn("invoice", "en", CUSTOMER)));
        assertEquals("Words.", page.body(turn("estimate", "en", UUID.randomUUID())));
        assertEquals("Words.", page.body(turn("estimate", "en", null)));
    }
}
