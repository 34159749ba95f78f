package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.not;

import changeover.contracts.PostgresForTests;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Map;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class KeptFilesPagesTest {

    static final LocalDate DAY = LocalDate.now(ZoneId.of("America/Toronto"));

    @Inject
    ABilledShop billed;

    @Test
    void a_wrong_file_goes_again_from_its_own_button() {
        for (boolean french : new boolean[] {false, true}) {
            var shop = billed.open("CA-ON", french ? "fr" : "en");
            String path = post(shop.office(), shop.at("money/bank/banks"), Map.of("name", "Harbour Bank"))
                    .statusCode(303)
                    .extract()
                    .header("Location")
                    .replaceFirst("^https?://[^/]+", "");
            String file = "<OFX><CURDEF>CAD<ACCTID>7<STMTTRN><FITID>81<DTPOSTED>"
                    + DAY.toString().replace("-", "") + "<TRNAMT>3.21<NAME>Rebate of May</STMTTRN></OFX>";
            BankPagesTest.bring(shop, path, file, Map.of("what", "keep")).statusCode(303);
            String page = as(shop.office())
                    .get(shop.at("money/bank"))
                    .then()
                    .body(containsString("Rebate of May"))
                    .body(containsString("lines.csv"))
                    .body(containsString(french ? "une ligne" : "one line"))
                    .extract()
                    .asString();
            String back = page.replaceAll("(?s).*action=\"([^\"]*/taken/[^\"]*)\".*", "$1");
            post(shop.office(), back, Map.of()).statusCode(303);
            as(shop.office())
                    .get(shop.at("money/bank"))
                    .then()
                    .body(not(containsString("Rebate of May")))
                    .body(not(containsString("lines.csv")));
            post(shop.office(), back, Map.of())
                    .statusCode(422)
                    .body(containsString(french ? "Rien n’a été repris" : "Nothing was taken back"));
        }
    }
}
