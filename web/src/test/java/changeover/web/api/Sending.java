package changeover.web.api;

import static changeover.web.AShop.as;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.restassured.http.ContentType;
import io.restassured.response.ValidatableResponse;
import java.util.UUID;

/** Sends documents as programs do: with an operation's id, a second time when the answer was lost, on a named edition. */
final class Sending {

    private Sending() {}

    /** Sends the same operation twice; both answers must be the same. */
    static ValidatableResponse twice(UUID person, String path, Object document) {
        String operation = UUID.randomUUID().toString();
        ValidatableResponse first = post(person, path, operation, document);
        ValidatableResponse second = post(person, path, operation, document);
        assertEquals(
                first.extract().statusCode() + first.extract().asString(),
                second.extract().statusCode() + second.extract().asString());
        return second;
    }

    static ValidatableResponse post(UUID person, String path, String operation, Object document) {
        return as(person)
                .header("Operation-Id", operation)
                .contentType(ContentType.JSON)
                .body(document)
                .post(path)
                .then();
    }

    static ValidatableResponse put(UUID person, String path, String edition, Object document) {
        return as(person)
                .header("Operation-Id", UUID.randomUUID().toString())
                .header("If-Match", edition)
                .contentType(ContentType.JSON)
                .body(document)
                .put(path)
                .then();
    }

    static String etag(UUID person, String path) {
        return as(person).get(path).then().statusCode(200).extract().header("ETag");
    }
}
