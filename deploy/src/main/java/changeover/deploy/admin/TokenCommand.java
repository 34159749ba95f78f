package changeover.deploy.admin;

import changeover.deploy.launcher.TokenKey;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;

/** A bearer token for the API in a person's name, for a working day; only where nothing listens beyond this machine. */
final class TokenCommand implements AdminCommand {
    private static final Duration WORKING_DAY = Duration.ofHours(12);

    @Override
    public String words() {
        return "token";
    }

    @Override
    public String help() {
        return """
                Prints a bearer token for the API that speaks for a person (installations on this machine only).
                  deploy/admin token MAIL""";
    }

    @Override
    public int run(Running running, List<String> rest) throws Exception {
        if (rest.size() != 1) {
            throw new Refusing("token needs the mail address of one person.");
        }
        if (!Boolean.parseBoolean(running.told("loopback"))) {
            throw new Refusing("Tokens are given only by an installation that listens on this machine alone.");
        }
        System.out.println(TokenKey.sign(running.told("token.key"), claims(running, rest.getFirst())));
        return 0;
    }

    private static String claims(Running running, String mail) throws Exception {
        String ask =
                "select person_id, name, email from membership where lower(email) = lower(?) order by made_at desc limit 1";
        try (Connection connection = running.connect("owner");
                PreparedStatement statement = connection.prepareStatement(ask)) {
            statement.setString(1, mail);
            try (ResultSet row = statement.executeQuery()) {
                if (!row.next()) {
                    throw new Refusing("Nobody with the address " + mail + " belongs to a business here.");
                }
                return claims(row.getString(1), row.getString(2), row.getString(3));
            }
        }
    }

    private static String claims(String subject, String name, String mail) {
        Instant now = Instant.now();
        ObjectNode claims = new ObjectMapper().createObjectNode();
        claims.put("iss", TokenKey.ISSUER)
                .put("sub", subject)
                .put("typ", "Bearer")
                .put("jti", UUID.randomUUID().toString())
                .put("name", name)
                .put("email", mail)
                .put("preferred_username", mail)
                .put("iat", now.getEpochSecond())
                .put("exp", now.plus(WORKING_DAY).getEpochSecond());
        return claims.toString();
    }
}
