package changeover.web.field;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.builder.MultiPartSpecBuilder;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** A technician photographs what was found; the photo is seen by who may see the visit, and by nobody else. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class PhotoPagesTest {

    private static final String TOKEN = "AAAAAAAAAAAAAAAAAAAAAA";
    private static final Pattern TASK = Pattern.compile("/tasks/([0-9a-f-]{36})\"");
    private static final Pattern PICTURE = Pattern.compile("/photos/([0-9a-f]{64})\\.jpg\"");
    private static final Pattern FINDING = Pattern.compile("<option value=\"([0-9a-f-]{36})\" selected");
    private static final Pattern BACK = Pattern.compile("name=\"back\" value=\"([0-9a-f-]{36})\"");

    @Inject
    AShop shops;

    @Test
    void a_finding_gets_its_photo_from_the_page() throws IOException {
        AShop.Shop shop = shops.open("CA-QC", "fr");
        AShop.Shop other = shops.open("CA-ON", "en");
        String visit = PlannedVisit.visit(shop, PlannedVisit.home(shop));
        String at = shop.at("field/visits/" + visit);
        Matcher first = TASK.matcher(page(shop, at));
        assertTrue(first.find());
        String photos = at + "/tasks/" + first.group(1) + "/photos";
        post(
                        shop.technician(),
                        at + "/tasks/" + first.group(1),
                        Map.of(
                                "made",
                                UUID.randomUUID().toString(),
                                "outcome",
                                "done",
                                "level",
                                "recommended",
                                "text",
                                "Rouille au bac",
                                "language",
                                "fr",
                                "photo",
                                "yes"))
                .statusCode(303)
                .header("Location", containsString(photos));

        Matcher finding = FINDING.matcher(page(shop, photos));
        assertTrue(finding.find());
        send(shop, photos, new byte[0], "Bac").statusCode(422).body(containsString("Prenez ou choisissez"));
        send(shop, photos, "<svg onload=x>".getBytes(StandardCharsets.UTF_8), "Bac")
                .statusCode(422)
                .body(containsString("value=\"Bac\""));
        send(shop, photos, picture(), "Bac, côté gauche", finding.group(1)).statusCode(303);

        String shown = page(shop, photos);
        assertTrue(shown.contains("Bac, côté gauche") && shown.contains("Rouille au bac"), shown);
        Matcher kept = PICTURE.matcher(shown);
        assertTrue(kept.find());
        String bytes = at + "/photos/" + kept.group(1) + ".jpg";
        as(shop.technician()).get(bytes).then().statusCode(200).contentType("image/jpeg");
        as(other.technician()).get(bytes).then().statusCode(404);
        as(other.technician())
                .get(other.at("field/visits/" + visit + "/photos/" + kept.group(1) + ".jpg"))
                .then()
                .statusCode(404);
        as(shop.technician())
                .get(at + "/photos/" + "0".repeat(64) + ".jpg")
                .then()
                .statusCode(404);
        as(shop.office())
                .get(shop.api("visits/" + visit + "/photos/" + kept.group(1)))
                .then()
                .statusCode(200);

        Matcher back = BACK.matcher(shown);
        assertTrue(back.find());
        as(shop.technician())
                .redirects()
                .follow(false)
                .cookie("csrf-token", TOKEN)
                .multiPart("csrf", TOKEN)
                .multiPart("made", UUID.randomUUID().toString())
                .multiPart("back", back.group(1))
                .post(photos)
                .then()
                .statusCode(303);
        as(shop.technician()).get(photos).then().body(not(containsString("côté gauche")));
    }

    @Test
    void the_bytes_of_a_photo_come_in_by_the_api_once() throws IOException {
        AShop.Shop shop = shops.open("CA-ON", "en");
        byte[] png = picture();
        String operation = UUID.randomUUID().toString();
        String[] names = new String[2];
        for (int times = 0; times < 2; times++) {
            names[times] = as(shop.technician())
                    .header("Operation-Id", operation)
                    .contentType("image/png")
                    .body(png)
                    .post(shop.api("photos"))
                    .then()
                    .statusCode(200)
                    .extract()
                    .path("sha256");
        }
        assertEquals(names[0], names[1]);
    }

    private static String page(AShop.Shop shop, String path) {
        return as(shop.technician()).get(path).then().statusCode(200).extract().asString();
    }

    private static ValidatableResponse send(AShop.Shop shop, String path, byte[] bytes, String caption) {
        return send(shop, path, bytes, caption, "");
    }

    private static ValidatableResponse send(
            AShop.Shop shop, String path, byte[] bytes, String caption, String finding) {
        return as(shop.technician())
                .redirects()
                .follow(false)
                .cookie("csrf-token", TOKEN)
                .multiPart("csrf", TOKEN)
                .multiPart("made", UUID.randomUUID().toString())
                .multiPart("finding", finding)
                .multiPart(new MultiPartSpecBuilder(caption)
                        .controlName("caption")
                        .charset(StandardCharsets.UTF_8)
                        .build())
                .multiPart("photo", "pan.png", bytes, "image/png")
                .post(path)
                .then();
    }

    private static byte[] picture() throws IOException {
        var image = new BufferedImage(64, 48, BufferedImage.TYPE_INT_RGB);
        image.setRGB(3, 3, Color.ORANGE.getRGB());
        var bytes = new ByteArrayOutputStream();
        ImageIO.write(image, "png", bytes);
        return bytes.toByteArray();
    }
}
