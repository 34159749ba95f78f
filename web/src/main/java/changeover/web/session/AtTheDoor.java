package changeover.web.session;

import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Door;
import changeover.contracts.tenants.Doors;
import changeover.contracts.tenants.Role;
import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.security.runtime.QuarkusPrincipal;
import io.quarkus.security.runtime.QuarkusSecurityIdentity;
import io.quarkus.vertx.http.runtime.security.HttpSecurityPolicy;
import io.smallrye.mutiny.Uni;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/**
 * The one door: for every request it decides which business the path names and which role the person has there, from
 * our own rows. Nothing else decides either. What a stranger asks for is not found.
 */
@ApplicationScoped
class AtTheDoor implements HttpSecurityPolicy {

    static final String TENANT = "changeover.tenant";
    static final String PERSON = "changeover.person";
    static final String DOOR = "changeover.door";
    static final String LANGUAGE = "changeover.language";

    @Inject
    Doors doors;

    @Override
    public Uni<CheckResult> checkPermission(
            RoutingContext request, Uni<SecurityIdentity> identity, AuthorizationRequestContext context) {
        Address address = Address.of(request.normalizedPath());
        return switch (address.kind()) {
            case OPEN -> CheckResult.permit();
            case NOWHERE -> {
                request.fail(404);
                yield Uni.createFrom().nothing();
            }
            case MACHINE_ROOM -> fromThisMachine(request) ? CheckResult.permit() : nowhere(request);
            case DOORSTEP -> identity.map(who -> new CheckResult(!who.isAnonymous()));
            case CUSTOMER -> context.runBlocking(request, identity, (asked, who) -> customer(address));
            case BUSINESS, API -> context.runBlocking(request, identity, (asked, who) -> member(asked, address, who));
        };
    }

    private static Uni<CheckResult> nowhere(RoutingContext request) {
        request.fail(404);
        return Uni.createFrom().nothing();
    }

    /** Measurements and the API's description are for whoever stands at the machine, not for a proxy's callers. */
    private static boolean fromThisMachine(RoutingContext request) {
        var remote = request.request().remoteAddress();
        return remote != null
                && remote.hostAddress() != null
                && (remote.hostAddress().startsWith("127.")
                        || remote.hostAddress().equals("0:0:0:0:0:0:0:1"))
                && request.request().getHeader("X-Forwarded-For") == null
                && request.request().getHeader("Forwarded") == null;
    }

    private CheckResult customer(Address address) {
        return doors.tenant(address.slug())
                .map(tenant -> new CheckResult(
                        true,
                        QuarkusSecurityIdentity.builder()
                                .setPrincipal(new QuarkusPrincipal(CurrentTenant.NOBODY.toString()))
                                .addRole("customer")
                                .addAttribute(TENANT, tenant)
                                .addAttribute(PERSON, CurrentTenant.NOBODY)
                                .build()))
                .orElse(CheckResult.DENY);
    }

    private CheckResult member(RoutingContext request, Address address, SecurityIdentity who) {
        if (who.isAnonymous()) {
            return CheckResult.DENY;
        }
        return person(who)
                .flatMap(person -> doors.of(address.slug(), person).map(door -> inside(request, who, person, door)))
                .orElse(CheckResult.DENY);
    }

    private static Optional<UUID> person(SecurityIdentity who) {
        try {
            return Optional.of(UUID.fromString(who.getPrincipal().getName()));
        } catch (IllegalArgumentException notAPerson) {
            return Optional.empty();
        }
    }

    /** The person as known in this business: the token's own roles are left outside. */
    private static CheckResult inside(RoutingContext request, SecurityIdentity who, UUID person, Door door) {
        return new CheckResult(
                true,
                QuarkusSecurityIdentity.builder()
                        .setPrincipal(who.getPrincipal())
                        .addCredentials(who.getCredentials())
                        .addAttributes(who.getAttributes())
                        .addRoles(roles(request, door))
                        .addAttribute(TENANT, door.tenantId())
                        .addAttribute(PERSON, person)
                        .addAttribute(DOOR, door)
                        .addAttribute(LANGUAGE, door.personLanguage())
                        .build());
    }

    /** An accountant reads where the owner and the office read money, and is nobody anywhere else. */
    private static Set<String> roles(RoutingContext request, Door door) {
        boolean reads = door.role() == Role.ACCOUNTANT
                && AccountantsReach.reads(request.request().method().name(), request.normalizedPath());
        return reads
                ? Set.of(Role.ACCOUNTANT.code(), Role.OFFICE.code(), Role.OWNER.code())
                : Set.of(door.role().code());
    }
}
