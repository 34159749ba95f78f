package changeover.web.session;

import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.ws.rs.core.Response;
import java.security.SecureRandom;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Pattern;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.keycloak.admin.client.CreatedResponseUtil;
import org.keycloak.admin.client.Keycloak;
import org.keycloak.admin.client.resource.UsersResource;
import org.keycloak.representations.idm.CredentialRepresentation;
import org.keycloak.representations.idm.UserRepresentation;

/**
 * The sign-ins of the installation, kept by Keycloak. Called outside any business's transaction: a sign-in without a
 * membership opens no door, so one that was made for nothing does no harm.
 */
@ApplicationScoped
public class SignIns {

    /** A sign-in, and for a new one the password that serves once; it is shown once and kept nowhere. */
    public record Invited(UUID personId, Optional<String> oneTimePassword) {}

    /** Letters and digits that nobody takes for one another when reading them aloud. */
    private static final String CLEAR = "abcdefghjkmnpqrstuvwxyz23456789";

    private static final int CREATED = 201;
    private static final int NOT_TAKEN = 400;

    /** What Keycloak takes for no name (its person-name-prohibited-characters, as shipped); our own name of the person keeps it. */
    private static final Pattern NO_NAME = Pattern.compile("[<>&\"$%!#?§;*~/\\\\|^=\\[\\]{}()\\p{Cntrl}]+");

    @Inject
    Keycloak keycloak;

    @ConfigProperty(name = "changeover.sign-in.realm", defaultValue = "changeover")
    String realm;

    private static final SecureRandom RANDOM = new SecureRandom();

    /** Finds the sign-in of a mail address, or makes one. */
    public Invited invite(String email, String name, String language) {
        UsersResource users = keycloak.realm(realm).users();
        List<UserRepresentation> known = users.searchByEmail(email, true);
        if (!known.isEmpty()) {
            return new Invited(UUID.fromString(known.getFirst().getId()), Optional.empty());
        }
        String password = password();
        try (Response made = users.create(user(email, name, language, password))) {
            return switch (made.getStatus()) {
                case CREATED ->
                    new Invited(UUID.fromString(CreatedResponseUtil.getCreatedId(made)), Optional.of(password));
                case NOT_TAKEN ->
                    throw Refusal.of("sign-in.not-taken").at("email").thrown();
                default -> throw new IllegalStateException("a sign-in could not be made, status " + made.getStatus());
            };
        }
    }

    /** A new password that serves once, for somebody who has lost theirs. */
    public String renew(UUID personId) {
        String password = password();
        keycloak.realm(realm).users().get(personId.toString()).resetPassword(temporary(password));
        return password;
    }

    /** A password that a person keeps, chosen for them: the demonstration's sign-ins. */
    public void choose(UUID personId, String password) {
        var credential = temporary(password);
        credential.setTemporary(false);
        keycloak.realm(realm).users().get(personId.toString()).resetPassword(credential);
    }

    private static UserRepresentation user(String email, String name, String language, String password) {
        var user = new UserRepresentation();
        user.setUsername(email);
        user.setEmail(email);
        user.setEmailVerified(true);
        user.setEnabled(true);
        String plain = NO_NAME.matcher(name).replaceAll(" ").strip();
        String called = plain.isEmpty() ? email : plain;
        int last = called.lastIndexOf(' ');
        user.setFirstName(last < 0 ? called : called.substring(0, last));
        user.setLastName(last < 0 ? called : called.substring(last + 1));
        user.setAttributes(Map.of("locale", List.of(language)));
        user.setCredentials(List.of(temporary(password)));
        return user;
    }

    private static CredentialRepresentation temporary(String password) {
        var credential = new CredentialRepresentation();
        credential.setType(CredentialRepresentation.PASSWORD);
        credential.setValue(password);
        credential.setTemporary(true);
        return credential;
    }

    /** Sixteen clear characters in four groups: 79 bits. */
    public static String password() {
        var password = new StringBuilder();
        for (int i = 0; i < 16; i++) {
            if (i > 0 && i % 4 == 0) {
                password.append('-');
            }
            password.append(CLEAR.charAt(RANDOM.nextInt(CLEAR.length())));
        }
        return password.toString();
    }
}
