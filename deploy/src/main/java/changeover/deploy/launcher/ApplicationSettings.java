package changeover.deploy.launcher;

import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;

/** What the application is told by its environment; in production an operator tells it the same names. */
final class ApplicationSettings {
    static final String RUNNING = "running.properties";

    private final DataFolder folder;
    private final Secrets secrets;
    private final Postgres postgres;
    private final Keycloak keycloak;
    private final Address address;

    ApplicationSettings(DataFolder folder, Secrets secrets, Postgres postgres, Keycloak keycloak, Address address) {
        this.folder = folder;
        this.secrets = secrets;
        this.postgres = postgres;
        this.keycloak = keycloak;
        this.address = address;
    }

    Map<String, String> environment() {
        Map<String, String> all = new TreeMap<>();
        String url = postgres.url("changeover");
        all.put("QUARKUS_HTTP_HOST", address.listen());
        all.put("QUARKUS_HTTP_PORT", Integer.toString(address.port()));
        all.put("CHANGEOVER_URL", address.url());
        all.put("QUARKUS_DATASOURCE_JDBC_URL", url);
        all.put("QUARKUS_DATASOURCE_USERNAME", "changeover_app");
        all.put("QUARKUS_DATASOURCE_PASSWORD", secrets.password("changeover_app"));
        all.put("QUARKUS_FLYWAY_USERNAME", "changeover_owner");
        all.put("QUARKUS_FLYWAY_PASSWORD", secrets.password("changeover_owner"));
        all.put("QUARKUS_DATASOURCE_LOOKUP_JDBC_URL", url);
        all.put("QUARKUS_DATASOURCE_LOOKUP_USERNAME", "changeover_lookup");
        all.put("QUARKUS_DATASOURCE_LOOKUP_PASSWORD", secrets.password("changeover_lookup"));
        all.put("QUARKUS_OIDC_AUTH_SERVER_URL", keycloak.realmUrl());
        all.put("CHANGEOVER_SIGN_IN_ORIGIN", keycloak.url());
        all.put("QUARKUS_OIDC_CLIENT_ID", "changeover-web");
        all.put("QUARKUS_OIDC_CREDENTIALS_SECRET", secrets.password("keycloak-web-client"));
        all.put("QUARKUS_OIDC_TOKEN_STATE_MANAGER_ENCRYPTION_SECRET", secrets.password("session-cookies"));
        all.put("QUARKUS_KEYCLOAK_ADMIN_CLIENT_SERVER_URL", keycloak.url());
        all.put("QUARKUS_KEYCLOAK_ADMIN_CLIENT_CLIENT_SECRET", secrets.password("keycloak-admin-client"));
        all.put("CHANGEOVER_KEYS_SECRET", secrets.key("access-codes"));
        all.put("CHANGEOVER_TOKENS_ENABLED", Boolean.toString(loopback()));
        all.put("CHANGEOVER_TOKENS_PUBLIC_KEY", TokenKey.publicHalf(tokenKey()));
        String day = folder.settings().getProperty("rehearsal-day");
        if (day != null) {
            all.put("CHANGEOVER_REHEARSAL_DAY", day);
        }
        return all;
    }

    private boolean loopback() {
        return address.listen().startsWith("127.");
    }

    private String tokenKey() {
        return secrets.kept("token-key", TokenKey::make);
    }

    /** Writes what {@code deploy/admin} needs to know of the running installation. */
    void publish(long launcher) {
        Properties all = new Properties();
        environment().forEach((name, value) -> all.setProperty("env." + name, value));
        all.setProperty("launcher", Long.toString(launcher));
        all.setProperty("url", address.url());
        all.setProperty("loopback", Boolean.toString(loopback()));
        all.setProperty("keycloak", keycloak.url());
        all.setProperty("jdbc", postgres.url("changeover"));
        all.setProperty("app.user", "changeover_app");
        all.setProperty("app.password", secrets.password("changeover_app"));
        all.setProperty("owner.user", "changeover_owner");
        all.setProperty("owner.password", secrets.password("changeover_owner"));
        all.setProperty("token.key", TokenKey.privateHalf(tokenKey()));
        PrivateFile.write(folder.run().resolve(RUNNING), all);
    }
}
