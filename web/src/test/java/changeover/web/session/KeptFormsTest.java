package changeover.web.session;

import static changeover.web.AShop.as;
import static org.hamcrest.CoreMatchers.containsString;

import changeover.contracts.PostgresForTests;
import changeover.contracts.tenants.Seal;
import changeover.web.AShop;
import io.agroal.api.AgroalDataSource;
import io.quarkus.agroal.DataSource;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.sql.SQLException;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** A form whose session had ended is given back once, to its writer, in the business it was written in. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class KeptFormsTest {

    @Inject
    AShop shops;

    @Inject
    Seal seal;

    @Inject
    @DataSource("lookup")
    AgroalDataSource rows;

    @Test
    void only_its_writer_gets_it_back_and_only_once() throws SQLException {
        var shop = shops.open("CA-ON", "en");
        var other = shops.open("CA-ON", "en");
        UUID form = keep(shop, shop.office().toString());
        as(shop.owner()).get(shop.at("again/" + form)).then().statusCode(404);
        as(shop.technician()).get(shop.at("again/" + form)).then().statusCode(404);
        as(other.owner()).get(other.at("again/" + form)).then().statusCode(404);
        as(other.owner()).get(shop.at("again/" + form)).then().statusCode(404);
        as(shop.office())
                .get(shop.at("again/" + form))
                .then()
                .statusCode(200)
                .body(containsString("value=\"17 Ochre Lane\""))
                .body(containsString("name=\"writer\" value=\"" + shop.office() + "\""));
        as(shop.office()).get(shop.at("again/" + form)).then().statusCode(404);
    }

    @Test
    void a_page_that_did_not_say_who_wrote_gives_it_to_whoever_works_there() throws SQLException {
        var shop = shops.open("CA-ON", "en");
        UUID form = keep(shop, "");
        as(shop.owner()).get(shop.at("again/" + form)).then().statusCode(200);
    }

    private UUID keep(AShop.Shop shop, String writer) throws SQLException {
        UUID id = UUID.randomUUID();
        String form = """
                {"action": "/%s/homes", "fields": [{"name": "writer", "value": "%s"},
                 {"name": "street", "value": "17 Ochre Lane"}]}""".formatted(shop.slug(), writer);
        try (var connection = rows.getConnection();
                var keep = connection.prepareStatement("insert into kept_form (id, sealed) values (?, ?)")) {
            keep.setObject(1, id);
            keep.setBytes(2, seal.close(form.getBytes(StandardCharsets.UTF_8), "kept forms"));
            keep.executeUpdate();
        }
        return id;
    }
}
