package changeover.web.walls;

import changeover.web.session.PersonByHeader;
import io.restassured.RestAssured;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Asks the running application and follows nothing by itself. */
final class Caller {

    static final String TOKEN = "AAAAAAAAAAAAAAAAAAAAAA";

    private static final Pattern ID =
            Pattern.compile("[0-9a-fA-F]{8}-[0-9a-fA-F]{4}-[0-9a-fA-F]{4}-[0-9a-fA-F]{4}-[0-9a-fA-F]{12}");
    private static final HttpClient CLIENT = HttpClient.newBuilder()
            .version(HttpClient.Version.HTTP_1_1)
            .connectTimeout(Duration.ofSeconds(10))
            .build();

    private Caller() {}

    /** Who asks: a member's id, a customer's secret, or neither. */
    record Who(
            String words, @Nullable UUID person, @Nullable String secret) {
        static final Who NOBODY = new Who("nobody", null, null);

        static Who member(String words, UUID person) {
            return new Who(words, person, null);
        }

        static Who customer(String words, String secret) {
            return new Who(words, null, secret);
        }
    }

    /** What is sent along. */
    record Sent(String type, String text) {
        static final Sent NOTHING = new Sent("", "");
        static final Sent EMPTY_FORM = form(Map.of());

        static Sent json(String text) {
            return new Sent("application/json", text);
        }

        static Sent form(Map<String, List<String>> fields) {
            String all = fields.entrySet().stream()
                    .filter(field -> !field.getKey().equals("csrf"))
                    .flatMap(field -> field.getValue().stream()
                            .map(value -> "&" + encoded(field.getKey()) + "=" + encoded(value)))
                    .collect(Collectors.joining());
            return new Sent("application/x-www-form-urlencoded", "csrf=" + TOKEN + all);
        }
    }

    record Answer(int status, String type, String location, String body) {

        /** The same for everybody: ids are left out. */
        String blank() {
            return status + " " + type + " " + ID.matcher(location).replaceAll("#") + "\n"
                    + ID.matcher(body).replaceAll("#");
        }

        boolean isPage() {
            return type.startsWith("text/html");
        }
    }

    /** A form with a file, and nothing in either. */
    static Sent multipart() {
        return new Sent(
                "multipart/form-data; boundary=walls",
                "--walls\r\nContent-Disposition: form-data; name=\"csrf\"\r\n\r\n" + TOKEN + "\r\n--walls--\r\n");
    }

    static Answer get(Who who, String path) {
        return ask(who, "GET", path, Sent.NOTHING);
    }

    static Answer ask(Who who, String method, String path, Sent sent) {
        var request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + RestAssured.port + path))
                .timeout(Duration.ofSeconds(60))
                .method(
                        method,
                        sent == Sent.NOTHING
                                ? BodyPublishers.noBody()
                                : BodyPublishers.ofString(sent.text(), StandardCharsets.UTF_8))
                .header("Operation-Id", UUID.randomUUID().toString())
                .header("If-Match", "\"0\"")
                .header("Cookie", "csrf-token=" + TOKEN + (who.secret() == null ? "" : "; yours=" + who.secret()));
        if (!sent.type().isEmpty()) {
            request.header("Content-Type", sent.type());
        }
        if (who.person() != null) {
            request.header(PersonByHeader.HEADER, who.person().toString());
        }
        try {
            var answer = CLIENT.send(request.build(), BodyHandlers.ofString(StandardCharsets.UTF_8));
            return new Answer(
                    answer.statusCode(),
                    answer.headers().firstValue("Content-Type").orElse(""),
                    answer.headers().firstValue("Location").orElse(""),
                    answer.body());
        } catch (IOException cause) {
            throw new UncheckedIOException(method + " " + path, cause);
        } catch (InterruptedException cause) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(cause);
        }
    }

    /** An address with its ids left out. */
    static String shape(String path) {
        return ID.matcher(path).replaceAll("#");
    }

    static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
