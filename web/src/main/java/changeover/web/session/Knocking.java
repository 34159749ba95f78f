package changeover.web.session;

import io.quarkus.oidc.runtime.OidcAuthenticationMechanism;
import io.quarkus.security.identity.IdentityProviderManager;
import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.security.identity.request.AuthenticationRequest;
import io.quarkus.vertx.http.runtime.security.ChallengeData;
import io.quarkus.vertx.http.runtime.security.HttpAuthenticationMechanism;
import io.quarkus.vertx.http.runtime.security.HttpCredentialTransport;
import io.smallrye.mutiny.Uni;
import io.vertx.core.http.HttpMethod;
import io.vertx.ext.web.RoutingContext;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Alternative;
import jakarta.inject.Inject;
import java.util.Map;
import java.util.Set;

/**
 * Who knocks: pages by the session's cookie, the API by a bearer token only. A form whose session has ended is kept
 * until its writer has signed in again.
 */
@Alternative
@Priority(1)
@ApplicationScoped
class Knocking implements HttpAuthenticationMechanism {

    @Inject
    OidcAuthenticationMechanism oidc;

    @Inject
    KeptForms forms;

    @Override
    public Uni<SecurityIdentity> authenticate(RoutingContext context, IdentityProviderManager manager) {
        Address.Kind kind = Address.of(context.normalizedPath()).kind();
        boolean bearer = context.request().getHeader("Authorization") != null;
        return switch (kind) {
            case OPEN, MACHINE_ROOM, CUSTOMER, NOWHERE -> Uni.createFrom().nullItem();
            case API ->
                bearer ? oidc.authenticate(context, manager) : Uni.createFrom().nullItem();
            case DOORSTEP, BUSINESS -> oidc.authenticate(context, manager);
        };
    }

    @Override
    public Uni<ChallengeData> getChallenge(RoutingContext context) {
        Address address = Address.of(context.normalizedPath());
        if (address.kind() == Address.Kind.API) {
            return Uni.createFrom().item(new ChallengeData(401, Map.of("WWW-Authenticate", "Bearer")));
        }
        if (address.kind() == Address.Kind.CUSTOMER) {
            return Uni.createFrom().item(new ChallengeData(404));
        }
        if (address.kind() == Address.Kind.BUSINESS && isForm(context)) {
            return forms.keep(context)
                    .onItem()
                    .transformToUni(kept -> kept.isPresent()
                            ? Uni.createFrom()
                                    .item(new ChallengeData(
                                            303, "Location", "/" + address.slug() + "/again/" + kept.get()))
                            : oidc.getChallenge(context));
        }
        return oidc.getChallenge(context);
    }

    private static boolean isForm(RoutingContext context) {
        String type = context.request().getHeader("Content-Type");
        return context.request().method() == HttpMethod.POST
                && context.request().getHeader("HX-Request") == null
                && type != null
                && type.startsWith("application/x-www-form-urlencoded");
    }

    @Override
    public Set<Class<? extends AuthenticationRequest>> getCredentialTypes() {
        return oidc.getCredentialTypes();
    }

    @Override
    public Uni<HttpCredentialTransport> getCredentialTransport(RoutingContext context) {
        return oidc.getCredentialTransport(context);
    }
}
