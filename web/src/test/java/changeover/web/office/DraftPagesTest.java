package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.allOf;
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

/** A draft is changed and discarded on its pages, in both languages. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class DraftPagesTest {

    private static final List<String> FORMS = List.of("draft", "discard");

    @Inject
    AShop shops;

    @Inject
    ALivedInHome homes;

    @Inject
    DraftsByHand drafts;

    @Inject
    InvoiceLists lists;

    private UUID plan(AShop.Shop shop, String language) {
        var lived = homes.sold(shop, language);
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

    private Map<String, String> filled(DraftByHand draft) {
        var fields = new HashMap<>(Map.of(
                "version", String.valueOf(draft.version()),
                "mayIssueFrom", draft.mayIssueFrom().toString(),
                "dueDays", "21",
                "purchaseOrder", "PO-88",
                "words", "",
                "quantity", "",
                "price", "",
                "unit", "C62",
                "work", "repair"));
        for (DraftByHand.Line line : draft.lines()) {
            fields.put("words-" + line.id(), line.words());
            fields.put("quantity-" + line.id(), line.quantity().toPlainString());
            fields.put("price-" + line.id(), line.unitPrice().decimal());
        }
        return fields;
    }

    @Test
    void a_draft_is_changed_and_its_total_follows() {
        var shop = shops.open("CA-ON", "en");
        UUID id = plan(shop, "en");
        String invoice = shop.at("money/invoices/" + id);
        as(shop.office())
                .get(invoice)
                .then()
                .statusCode(200)
                .body(allOf(containsString("Change the draft"), containsString("Discard the draft")));
        as(shop.office())
                .get(invoice + "/draft")
                .then()
                .statusCode(200)
                .body(allOf(containsString("A line of your own"), containsString("389.00")));
        DraftByHand draft = now(shop, id);
        var fields = filled(draft);
        UUID line = draft.lines().getFirst().id();
        var beyond = new HashMap<>(fields);
        beyond.putAll(Map.of("words", "Trap", "quantity", "99999", "price", "99999999.99"));
        post(shop.office(), invoice + "/draft", beyond)
                .statusCode(422)
                .body(allOf(containsString("id=\"price-wrong\""), containsString("value=\"99999999.99\"")));
        fields.put("price-" + line, "300.00");
        fields.putAll(Map.of("words", "Trap and drain", "quantity", "2", "price", "50"));
        post(shop.office(), invoice + "/draft", fields).statusCode(303);
        as(shop.office())
                .get(invoice)
                .then()
                .body(allOf(
                        containsString("$452.00"),
                        containsString("written by hand"),
                        containsString("Trap and drain"),
                        containsString("PO-88")));
        DraftByHand after = now(shop, id);
        assertEquals(21, after.dueDays());

        fields = filled(after);
        fields.put("off-" + after.lines().getLast().id(), "yes");
        post(shop.owner(), invoice + "/draft", fields).statusCode(303);
        as(shop.office()).get(invoice).then().body(containsString("$339.00"));
    }

    @Test
    void what_was_typed_is_never_lost() {
        var shop = shops.open("CA-QC", "fr");
        UUID id = plan(shop, "fr");
        String form = shop.at("money/invoices/" + id + "/draft");
        DraftByHand before = now(shop, id);
        UUID line = before.lines().getFirst().id();
        var fields = filled(before);
        fields.put("words-" + line, "Formule à ma façon");
        fields.put("quantity-" + line, "beaucoup");
        fields.put("words", "Chauffe-bloc");
        fields.put("price", "1,234");
        post(shop.office(), form, fields)
                .statusCode(422)
                .body(allOf(
                        containsString("Formule à ma façon"),
                        containsString("beaucoup"),
                        containsString("Chauffe-bloc"),
                        containsString("Une ligne à vous")));
        assertEquals(before, now(shop, id));

        var first = filled(before);
        first.put("off-" + line, "yes");
        first.putAll(Map.of("words", "Autre chose", "quantity", "1,5", "price", "10,00"));
        post(shop.owner(), form, first).statusCode(303);
        fields.put("quantity-" + line, "1");
        fields.put("price", "12,34");
        fields.put("quantity", "1");
        post(shop.office(), form, fields)
                .statusCode(422)
                .body(allOf(
                        containsString("Quelqu’un a modifié cette fiche"),
                        containsString("lignes qui ne sont plus sur le brouillon"),
                        containsString("Autre chose"),
                        containsString("1 · Formule à ma façon · "),
                        containsString(
                                "name=\"version\" value=\"" + now(shop, id).version() + "\"")));
        assertEquals("Autre chose", now(shop, id).lines().getFirst().words());
    }

    @Test
    void a_draft_is_discarded_with_a_reason_and_can_still_be_read() {
        for (String language : List.of("en", "fr")) {
            var shop = shops.open(language.equals("fr") ? "CA-QC" : "CA-ON", language);
            UUID id = plan(shop, language);
            String invoice = shop.at("money/invoices/" + id);
            as(shop.office()).get(invoice + "/discard").then().statusCode(200);
            post(shop.office(), invoice + "/discard", Map.of("version", "0", "why", "x"))
                    .statusCode(422)
                    .body(containsString(language.equals("fr") ? "Dites en quelques mots" : "in a few words"));
            post(shop.office(), invoice + "/discard", Map.of("version", "7", "why", "Déménage <b>"))
                    .statusCode(422)
                    .body(containsString("Déménage &lt;b&gt;"));
            post(shop.office(), invoice + "/discard", Map.of("version", "0", "why", "Moves away"))
                    .statusCode(303);
            as(shop.office())
                    .get(invoice)
                    .then()
                    .statusCode(200)
                    .body(allOf(
                            containsString("Moves away"),
                            containsString("Basil Fenn"),
                            containsString(language.equals("fr") ? "Écarté" : "Discarded"),
                            not(containsString("/issue"))));
            as(shop.office()).get(shop.at("money")).then().body(not(containsString(id.toString())));
            post(shop.office(), invoice + "/issue", Map.of()).statusCode(422);
            post(shop.office(), invoice + "/discard", Map.of("version", "0", "why", "Again"))
                    .statusCode(422)
                    .body(containsString("Moves away"));
            for (String form : FORMS) {
                as(shop.office()).get(invoice + "/" + form).then().statusCode(404);
            }
        }
    }

    @Test
    void an_issued_document_is_credited_instead() {
        var shop = shops.open("CA-ON", "en");
        UUID id = plan(shop, "en");
        String invoice = shop.at("money/invoices/" + id);
        var fields = filled(now(shop, id));
        post(shop.office(), invoice + "/issue", Map.of()).statusCode(303);
        for (String form : FORMS) {
            as(shop.office()).get(invoice + "/" + form).then().statusCode(404);
            fields.put("why", "Too late");
            post(shop.office(), invoice + "/" + form, fields)
                    .statusCode(422)
                    .body(containsString("a credit note corrects it"));
        }
        as(shop.office()).get(invoice).then().body(not(containsString("/discard")));
    }

    @Test
    void nobody_else_reaches_it() {
        var shop = shops.open("CA-ON", "en");
        var other = shops.open("CA-ON", "en");
        UUID id = plan(shop, "en");
        for (String form : FORMS) {
            String theirs = other.at("money/invoices/" + id + "/" + form);
            as(other.owner()).get(theirs).then().statusCode(404);
            post(other.owner(), theirs, Map.of("version", "0", "why", "Not ours"))
                    .statusCode(404);
            String own = shop.at("money/invoices/" + id + "/" + form);
            int refused = as(shop.technician()).get(own).then().extract().statusCode();
            post(shop.technician(), own, Map.of("version", "0", "why", "Not mine"))
                    .statusCode(refused);
            assertEquals(404, refused);
        }
        assertEquals(0, now(shop, id).version());
    }
}
