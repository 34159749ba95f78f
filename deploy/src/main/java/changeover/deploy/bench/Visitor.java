package changeover.deploy.bench;

import io.quarkus.arc.Arc;
import io.quarkus.security.identity.CurrentIdentityAssociation;
import io.quarkus.security.runtime.QuarkusPrincipal;
import io.quarkus.security.runtime.QuarkusSecurityIdentity;
import io.quarkus.vertx.http.runtime.CurrentVertxRequest;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.lang.reflect.Proxy;
import java.util.UUID;
import java.util.concurrent.Callable;

/** Somebody of the office who asks for a page without a network in between: a request, a sign-in, and nothing more. */
@ApplicationScoped
class Visitor {
    private static final String TOKEN = "AAAAAAAAAAAAAAAAAAAAAA";

    @Inject
    CurrentIdentityAssociation identity;

    @Inject
    CurrentVertxRequest request;

    /** Does the work as in a request of that person for that address. */
    <T> T of(UUID person, String path, Callable<T> work) throws Exception {
        var context = Arc.container().requestContext();
        context.activate();
        try {
            identity.setIdentity(QuarkusSecurityIdentity.builder()
                    .setPrincipal(new QuarkusPrincipal(person.toString()))
                    .addRole("owner")
                    .build());
            request.setCurrent(asked(path));
            return work.call();
        } finally {
            context.terminate();
        }
    }

    private static RoutingContext asked(String path) {
        HttpServerRequest without = proxy(HttpServerRequest.class, (method, first) -> null);
        return proxy(RoutingContext.class, (method, first) -> switch (method) {
            case "request" -> without;
            case "normalizedPath" -> path;
            case "get" -> "csrf_token".equals(first) ? TOKEN : null;
            default -> null;
        });
    }

    private interface Answer {
        @org.jspecify.annotations.Nullable
        Object to(String method, @org.jspecify.annotations.Nullable Object first);
    }

    private static <T> T proxy(Class<T> type, Answer answer) {
        return type.cast(Proxy.newProxyInstance(
                type.getClassLoader(),
                new Class<?>[] {type},
                (self, method, arguments) ->
                        answer.to(method.getName(), arguments == null || arguments.length == 0 ? null : arguments[0])));
    }
}
