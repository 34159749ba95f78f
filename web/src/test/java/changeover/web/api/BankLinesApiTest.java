package changeover.web.api;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.hasItem;
import static org.hamcrest.CoreMatchers.is;
import static org.hamcrest.CoreMatchers.nullValue;

import changeover.contracts.PostgresForTests;
import changeover.web.AShop;
import changeover.web.office.ABilledShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** Over the API as on the page: one line of the bank is several payments, and another is split over documents. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class BankLinesApiTest {

    private static final LocalDate DAY = LocalDate.now(ZoneId.of("America/Toronto"));

    @Inject
    ABilledShop billed;

    private static void bring(AShop.Shop shop, String amount, String words) {
        String ofx = """
                OFXHEADER:100
                DATA:OFXSGML

                <OFX><BANKMSGSRSV1><STMTTRNRS><STMTRS><CURDEF>CAD<BANKACCTFROM><ACCTID>14</BANKACCTFROM><BANKTRANLIST>
                <STMTTRN><TRNTYPE>CREDIT<DTPOSTED>%s<TRNAMT>%s<FITID>%s<NAME>%s</STMTTRN>
                </BANKTRANLIST></STMTRS></STMTTRNRS></BANKMSGSRSV1></OFX>
                """.formatted(DAY.toString().replace("-", ""), amount, words, words);
        as(shop.owner())
                .header("Operation-Id", UUID.randomUUID().toString())
                .contentType("text/plain; charset=UTF-8")
                .queryParam("bank", "Harbour Bank")
                .body(ofx)
                .post(shop.api("bank-files"))
                .then()
                .statusCode(200);
    }

    private static String line(AShop.Shop shop, String words) {
        return as(shop.office())
                .get(shop.api("bank-lines"))
                .then()
                .extract()
                .path("find { it.words == '" + words + "' }.id");
    }

    @Test
    void two_cheques_are_one_deposit_and_another_line_is_split() {
        for (boolean french : new boolean[] {false, true}) {
            var shop = billed.open("CA-ON", french ? "fr" : "en");
            Map<String, String> invoice =
                    as(shop.owner()).get(shop.api("invoices")).then().extract().path("find { it.number != null }");
            for (String amount : List.of("10.00", "12.35")) {
                send(
                                shop.office(),
                                shop.api("payments"),
                                Map.of("customer", invoice.get("customer"), "amount", amount, "way", "cheque"))
                        .statusCode(201);
            }
            bring(shop, "22.35", "Cheques");
            String deposit = line(shop, "Cheques");
            String at = shop.api("bank-lines/" + deposit);
            String shown = as(shop.office())
                    .get(at)
                    .then()
                    .body("proposal.what", is("together"))
                    .body("proposal.payments.size()", is(2))
                    .body("proposal.customer", nullValue())
                    .body("proposal.why", is(List.of("amount", "one_day")))
                    .extract()
                    .path("proposal.shown");
            as(shop.office())
                    .get(shop.at("money/bank"))
                    .then()
                    .body(containsString(french ? "2 paiements déjà notés" : "2 payments noted already"))
                    .body(containsString(french ? "une même façon et un même jour" : "one way and one day"));
            send(shop.office(), at + "/booking", Map.of("shown", shown + "0")).statusCode(422);
            post(shop.office(), shop.at("money/bank/bookings"), Map.of("line", deposit, "shown-" + deposit, shown))
                    .statusCode(303);
            as(shop.office()).get(at).then().body("waits", is(false));
            as(shop.office())
                    .get(shop.at("money/bank"))
                    .then()
                    .body(containsString(french ? "2 paiements déjà notés" : "2 payments noted already"));

            bring(shop, "31.00", "Wire");
            String split = shop.api("bank-lines/" + line(shop, "Wire") + "/split");
            String id = invoice.get("id");
            send(shop.office(), split, Map.of()).statusCode(422).body("refusals[0].code", is("bank.no-part"));
            send(shop.office(), split, Map.of("parts", List.of(Map.of("invoice", UUID.randomUUID()))))
                    .statusCode(422)
                    .body("refusals[0].code", is("bank.not-open"));
            send(shop.office(), split, Map.of("parts", List.of(Map.of("invoice", id, "amount", "32.00"))))
                    .statusCode(422)
                    .body("refusals.code", hasItem("bank.split-sum"));
            send(
                            shop.office(),
                            split,
                            Map.of(
                                    "parts",
                                    List.of(
                                            Map.of("invoice", id, "amount", "1.00"),
                                            Map.of("invoice", id, "amount", "2.00"))))
                    .statusCode(422)
                    .body("refusals[0].code", is("bank.part-twice"));
            Sending.twice(shop.office(), split, Map.of("parts", List.of(Map.of("invoice", id, "amount", "10.00"))))
                    .statusCode(200)
                    .body("waits", is(false));
            as(shop.office())
                    .get(shop.api("payments?customer=" + invoice.get("customer")))
                    .then()
                    .body("amount.amount", hasItem("31.00"));
            as(shop.technician()).get(shop.api("bank-lines")).then().statusCode(404);
        }
    }
}
