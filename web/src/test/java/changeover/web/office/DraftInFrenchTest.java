package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.billing.invoices.DraftByHand;
import changeover.billing.invoices.DraftsByHand;
import changeover.billing.payments.InvoiceFilter;
import changeover.billing.payments.InvoiceLists;
import changeover.contracts.PostgresForTests;
import changeover.web.ALivedInHome;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** A Quebec document is French first, whatever its reader asked for: a line that a person types is asked for in both languages. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class DraftInFrenchTest {

    @Inject
    AShop shops;

    @Inject
    ALivedInHome homes;

    @Inject
    DraftsByHand drafts;

    @Inject
    InvoiceLists lists;

    private UUID plan(AShop.Shop shop) {
        var lived = homes.sold(shop, "en");
        return shops.in(
                shop,
                () -> lists.rows(InvoiceFilter.ofCustomer(lived.customer()), LocalDate.of(2099, 1, 1)).stream()
                        .filter(row -> row.standing().isDraft())
                        .findFirst()
                        .orElseThrow()
                        .id());
    }

    private DraftByHand now(AShop.Shop shop, UUID draft) {
        return shops.in(shop, () -> drafts.of(draft).orElseThrow());
    }

    @Test
    void a_typed_line_is_kept_in_both_languages() {
        var shop = shops.open("CA-QC", "en");
        UUID id = plan(shop);
        String page = shop.at("money/invoices/" + id + "/draft");
        as(shop.office()).get(page).then().statusCode(200).body(containsString("The same words in French"));
        DraftByHand draft = now(shop, id);
        DraftByHand.Line first = draft.lines().getFirst();
        var fields = new HashMap<>(Map.of(
                "version", String.valueOf(draft.version()),
                "mayIssueFrom", draft.mayIssueFrom().toString(),
                "dueDays", "21",
                "words", "Two rubber feet",
                "french", "Deux pieds de caoutchouc",
                "quantity", "2",
                "price", "9.50",
                "unit", "C62",
                "work", "repair"));
        fields.put("words-" + first.id(), "The year's upkeep");
        fields.put("french-" + first.id(), "L’entretien de l’année");
        fields.put("quantity-" + first.id(), "1");
        fields.put("price-" + first.id(), first.unitPrice().decimal());
        post(shop.office(), page, fields).statusCode(303);
        List<DraftByHand.Line> lines = now(shop, id).lines();
        assertEquals("The year's upkeep", lines.getFirst().words());
        assertEquals("L’entretien de l’année", lines.getFirst().french());
        assertEquals("Two rubber feet", lines.getLast().words());
        assertEquals("Deux pieds de caoutchouc", lines.getLast().french());
        as(shop.office()).get(page).then().body(containsString("Deux pieds de caoutchouc"));
    }

    @Test
    void elsewhere_one_language_is_enough() {
        var shop = shops.open("CA-ON", "en");
        as(shop.office())
                .get(shop.at("money/invoices/" + plan(shop) + "/draft"))
                .then()
                .statusCode(200)
                .body(not(containsString("The same words in French")));
    }
}
