package changeover.web.session;

import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Alternative;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;

/** In module tests the sign-ins are a list of mail addresses; the rules before and behind it are the real ones. */
@Alternative
@Priority(100)
@ApplicationScoped
public class SignInsInMemory extends SignIns {

    private final Map<String, UUID> known = new ConcurrentHashMap<>();

    /** Somebody has a sign-in of their own already. */
    public void know(String email, UUID person) {
        known.put(email, person);
    }

    @Override
    public Invited invite(String email, String name, String language) {
        UUID theirs = known.get(email);
        if (theirs != null) {
            return new Invited(theirs, Optional.empty());
        }
        UUID made = UUID.randomUUID();
        known.put(email, made);
        return new Invited(made, Optional.of(password()));
    }

    @Override
    public String renew(UUID personId) {
        return password();
    }
}
