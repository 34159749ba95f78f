package changeover.web.session;

import io.quarkus.security.identity.IdentityProviderManager;
import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.security.runtime.QuarkusPrincipal;
import io.quarkus.security.runtime.QuarkusSecurityIdentity;
import io.quarkus.vertx.http.runtime.security.ChallengeData;
import io.quarkus.vertx.http.runtime.security.HttpAuthenticationMechanism;
import io.smallrye.mutiny.Uni;
import io.vertx.ext.web.RoutingContext;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Alternative;
import java.util.Map;

/** In module tests the person is whoever the header says; the door behind it is the real one. */
@Alternative
@Priority(100)
@ApplicationScoped
public class PersonByHeader implements HttpAuthenticationMechanism {

    public static final String HEADER = "Test-Person";

    @Override
    public Uni<SecurityIdentity> authenticate(RoutingContext context, IdentityProviderManager manager) {
        String person = context.request().getHeader(HEADER);
        return person == null
                ? Uni.createFrom().nullItem()
                : Uni.createFrom()
                        .item(QuarkusSecurityIdentity.builder()
                                .setPrincipal(new QuarkusPrincipal(person))
                                .build());
    }

    @Override
    public Uni<ChallengeData> getChallenge(RoutingContext context) {
        return Uni.createFrom().item(new ChallengeData(401, Map.of("WWW-Authenticate", "Bearer")));
    }
}
