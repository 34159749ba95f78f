package changeover.web;

import static changeover.web.AShop.post;

import changeover.web.AShop.Shop;
import io.restassured.RestAssured;
import io.restassured.http.ContentType;
import io.restassured.response.ValidatableResponse;
import java.util.Map;
import java.util.UUID;

/** A customer on their own page, behind the link that the office made. */
public final class OnTheirPage {

    private static final String TOKEN = "AAAAAAAAAAAAAAAAAAAAAA";

    private OnTheirPage() {}

    /** As the office makes it: the address is on the page once. */
    public static String secret(Shop shop, UUID customer) {
        return post(shop.office(), shop.at("customers/" + customer + "/link"), Map.of())
                .statusCode(200)
                .extract()
                .asString()
                .replaceAll("(?s).*/yours/([A-Za-z0-9_-]{43}).*", "$1");
    }

    public static ValidatableResponse read(String secret, String path) {
        return RestAssured.given().cookie("yours", secret).get(path).then();
    }

    public static ValidatableResponse say(String secret, String path, Map<String, String> fields) {
        return RestAssured.given()
                .redirects()
                .follow(false)
                .cookie("yours", secret)
                .cookie("csrf-token", TOKEN)
                .contentType(ContentType.URLENC.withCharset("UTF-8"))
                .formParam("csrf", TOKEN)
                .formParams(fields)
                .post(path)
                .then();
    }
}
