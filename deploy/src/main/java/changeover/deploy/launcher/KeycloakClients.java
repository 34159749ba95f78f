package changeover.deploy.launcher;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;

/** Tells Keycloak to which addresses it may send people back after signing in and out. */
final class KeycloakClients {
    private static final ObjectMapper JSON = new ObjectMapper();

    private final String keycloak;
    private final String client;
    private final String secret;

    KeycloakClients(String keycloak, String client, String secret) {
        this.keycloak = keycloak;
        this.client = client;
        this.secret = secret;
    }

    void register(String application) throws IOException {
        String token = token();
        String clients = keycloak + "/admin/realms/changeover/clients";
        JsonNode found = JSON.readTree(ok(
                Http.send(request(clients + "?clientId=changeover-web", token).GET())));
        ObjectNode web = (ObjectNode) found.get(0);
        List<String> backTo = addresses(application);
        ArrayNode redirects = web.putArray("redirectUris");
        backTo.forEach(redirects::add);
        ((ObjectNode) web.get("attributes")).put("post.logout.redirect.uris", String.join("##", backTo));
        web.put("rootUrl", application);
        HttpRequest.Builder put = request(clients + "/" + web.get("id").asText(), token)
                .header("Content-Type", "application/json")
                .PUT(HttpRequest.BodyPublishers.ofString(JSON.writeValueAsString(web)));
        ok(Http.send(put));
    }

    /** The address itself and, on loopback, its other spelling. */
    private static List<String> addresses(String application) {
        List<String> addresses = new ArrayList<>();
        addresses.add(application + "/*");
        if (application.startsWith("http://127.0.0.1:")) {
            addresses.add(application.replace("127.0.0.1", "localhost") + "/*");
        }
        return addresses;
    }

    private String token() throws IOException {
        HttpRequest.Builder ask = HttpRequest.newBuilder(
                        URI.create(keycloak + "/realms/master/protocol/openid-connect/token"))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(
                        "grant_type=client_credentials&client_id=" + client + "&client_secret=" + secret));
        return JSON.readTree(ok(Http.send(ask))).get("access_token").asText();
    }

    private static HttpRequest.Builder request(String address, String token) {
        return HttpRequest.newBuilder(URI.create(address)).header("Authorization", "Bearer " + token);
    }

    private static String ok(HttpResponse<String> answer) throws IOException {
        if (answer.statusCode() / 100 != 2) {
            throw new IOException("Keycloak answered " + answer.statusCode() + " to " + answer.uri());
        }
        return answer.body();
    }
}
