package changeover.web.office;

import static changeover.web.AShop.as;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.billing.invoices.Draft;
import changeover.billing.invoices.Drafts;
import changeover.billing.invoices.Invoices;
import changeover.billing.invoices.SomeDrafts;
import changeover.contracts.PostgresForTests;
import changeover.web.AShop;
import io.agroal.api.AgroalDataSource;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.Statement;
import java.util.Collections;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** More documents than a page holds are counted all, summed all, and reached page by page or by what they are called. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class LongListsTest {

    private static final int LATE = 130;

    @Inject
    AShop shops;

    @Inject
    Drafts drafts;

    @Inject
    Invoices invoices;

    @Inject
    AgroalDataSource rows;

    private void documents(AShop.Shop shop) {
        shops.in(shop, () -> {
            UUID ida = UUID.randomUUID();
            UUID basil = UUID.randomUUID();
            UUID home = UUID.randomUUID();
            try (Connection connection = rows.getConnection();
                    Statement statement = connection.createStatement()) {
                statement.execute("insert into customer (id, key, name, language) values ('" + ida
                        + "', 'ida', 'Ida Roe', 'fr'), ('" + basil + "', 'basil', 'Basil Fenn', 'fr')");
                statement.execute("insert into home (id, key, street, city, region, country) values ('" + home
                        + "', 'home', '1, rue du Quai', 'Port-Ambroise', 'QC', 'CA')");
            }
            Draft one = SomeDrafts.plan(ida, home, "100.00");
            invoices.issue(drafts.write(Collections.nCopies(LATE - 1, one)), SomeDrafts.DAY);
            invoices.issue(drafts.write(List.of(SomeDrafts.plan(basil, home, "100.00"))), SomeDrafts.DAY);
            return drafts.write(Collections.nCopies(LATE, one));
        });
    }

    @Test
    void all_are_counted_and_every_one_is_reached_in_both_languages() {
        for (String language : List.of("en", "fr")) {
            boolean french = language.equals("fr");
            String sum = french ? "14\u00a0947,40\u00a0$" : "$14,947.40";
            var shop = shops.open("CA-QC", language);
            documents(shop);
            as(shop.office())
                    .get(shop.at("money"))
                    .then()
                    .statusCode(200)
                    .body(containsString("<span class=\"count\">130</span>"))
                    .body(containsString(sum))
                    .body(containsString(french ? "Voir les 130" : "See all 130"))
                    .body(containsString(
                            french ? "les 100 premiers de 130 brouillons" : "the first 100 of 130 drafts"));
            String first = page(shop, "stands=late");
            assertEquals(100, count(first, "/money/customers/"), first);
            String second = page(shop, "stands=late&page=2");
            assertEquals(30, count(second, "/money/customers/"));
            for (String page : List.of(first, second)) {
                org.junit.jupiter.api.Assertions.assertTrue(page.contains("130 documents") && page.contains(sum), page);
            }
            as(shop.office())
                    .get(shop.at("money/documents?stands=late&page=2"))
                    .then()
                    .body(containsString(french ? "De 101 à 130 sur 130" : "101 to 130 of 130"))
                    .body(containsString("stands=late&amp;page=1"))
                    .body(not(containsString("page=3")));
            assertEquals(30, count(page(shop, "stands=ready&page=9"), "/money/customers/"));
            assertEquals(1, count(page(shop, "q=basil"), "/money/customers/"));
            assertEquals(1, count(page(shop, "q=" + (french ? "f" : "inv") + "-2026-0107"), "/money/customers/"));
            as(shop.office())
                    .get(shop.at("money/documents?q=100%25"))
                    .then()
                    .body(containsString(french ? "Aucun document ne répond" : "No document is like that"));
            for (String wrong : List.of("stands=elsewhere", "page=0", "page=soon")) {
                as(shop.office())
                        .get(shop.at("money/documents?" + wrong))
                        .then()
                        .statusCode(404);
            }
            assertEquals(30, count(behind(shop, "money/earned/open?age=older&page=2"), "/money/customers/"));
        }
    }

    private static String page(AShop.Shop shop, String asked) {
        return behind(shop, "money/documents?" + asked);
    }

    private static String behind(AShop.Shop shop, String address) {
        return as(shop.office())
                .get(shop.at(address))
                .then()
                .statusCode(200)
                .extract()
                .asString();
    }

    private static int count(String page, String words) {
        return page.split(words, -1).length - 1;
    }
}
