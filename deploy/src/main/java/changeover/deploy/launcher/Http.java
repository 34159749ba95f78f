package changeover.deploy.launcher;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;

/** Plain questions over HTTP. */
final class Http {
    private static final Duration PATIENCE = Duration.ofSeconds(10);
    private static final HttpClient CLIENT = HttpClient.newBuilder()
            .connectTimeout(Duration.ofSeconds(3))
            .version(HttpClient.Version.HTTP_1_1)
            .build();

    private Http() {}

    /** Returns whether the address answers with 200. */
    static boolean answers(String address) {
        try {
            return send(HttpRequest.newBuilder(URI.create(address)).GET()).statusCode() == 200;
        } catch (IOException e) {
            return false;
        }
    }

    static HttpResponse<String> send(HttpRequest.Builder request) throws IOException {
        try {
            return CLIENT.send(request.timeout(PATIENCE).build(), HttpResponse.BodyHandlers.ofString());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("interrupted", e);
        }
    }
}
