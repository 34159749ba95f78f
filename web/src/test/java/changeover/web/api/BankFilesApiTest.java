package changeover.web.api;

import static changeover.web.AShop.as;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;

import changeover.contracts.PostgresForTests;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** A bank's statement by the API: each line once, whatever is sent again. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class BankFilesApiTest {

    private static final String OFX = """
            OFXHEADER:100
            DATA:OFXSGML

            <OFX><BANKMSGSRSV1><STMTTRNRS><STMTRS><CURDEF>CAD<BANKACCTFROM><ACCTID>14</BANKACCTFROM><BANKTRANLIST>
            <STMTTRN><TRNTYPE>CREDIT<DTPOSTED>20260204<TRNAMT>12.00<FITID>a1<NAME>Deposit</STMTTRN>
            <STMTTRN><TRNTYPE>DEBIT<DTPOSTED>20260205<TRNAMT>-4.00<FITID>a2<NAME>Fee</STMTTRN>
            </BANKTRANLIST></STMTRS></STMTTRNRS></BANKMSGSRSV1></OFX>
            """;

    @Inject
    AShop shops;

    private static ValidatableResponse bring(AShop.Shop shop, String bank, String file) {
        return as(shop.owner())
                .header("Operation-Id", UUID.randomUUID().toString())
                .contentType("text/plain; charset=UTF-8")
                .queryParam("bank", bank)
                .body(file)
                .post(shop.api("bank-files"))
                .then();
    }

    @Test
    void an_amount_that_the_books_do_not_take_is_refused_in_its_line() {
        for (boolean french : new boolean[] {false, true}) {
            var shop = shops.open("CA-QC", french ? "fr" : "en");
            for (String amount : List.of("5.005", "100000000.00")) {
                bring(shop, "Harbour Bank", OFX.replace("<TRNAMT>-4.00", "<TRNAMT>" + amount))
                        .statusCode(422)
                        .body("refusals[0].field", equalTo("file"))
                        .body("refusals[0].sentence", containsString(french ? "La ligne 2" : "Line 2"));
            }
            as(shop.owner()).get(shop.api("bank-lines")).then().body("size()", equalTo(0));
        }
    }

    @Test
    void a_statement_comes_twice_and_its_lines_once() {
        var shop = shops.open("CA-QC", "en");
        bring(shop, "Harbour Bank", OFX)
                .statusCode(200)
                .body("fresh", equalTo(2))
                .body("known", equalTo(0));
        bring(shop, "Harbour Bank", OFX)
                .statusCode(200)
                .body("fresh", equalTo(0))
                .body("known", equalTo(2));
        bring(shop, "Harbour Bank", "2026-02-04,Deposit,12.00\n").statusCode(422);
        bring(shop, "Nobody's", "2026-02-04,Deposit,12.00\n").statusCode(422);
        bring(shop, "Harbour Bank", OFX.replace("<CURDEF>CAD", "<CURDEF>USD")).statusCode(422);
        as(shop.owner())
                .get(shop.api("bank-lines"))
                .then()
                .statusCode(200)
                .body("size()", equalTo(2))
                .body("[0].words", equalTo("Deposit"));
        as(shop.owner())
                .get(shop.api("bank-lines?skip=1&count=1"))
                .then()
                .statusCode(200)
                .body("size()", equalTo(1))
                .body("[0].words", equalTo("Fee"));
        as(shop.owner())
                .get(shop.api("bank-lines?skip=2"))
                .then()
                .statusCode(200)
                .body("size()", equalTo(0));
    }
}
