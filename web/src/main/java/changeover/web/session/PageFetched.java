package changeover.web.session;

import io.quarkus.oidc.JavaScriptRequestChecker;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;

/** A fetch made by a page's script is answered 499 when its session has ended, never led away to the sign-in. */
@ApplicationScoped
class PageFetched implements JavaScriptRequestChecker {

    @Override
    public boolean isJavaScriptRequest(RoutingContext context) {
        return context.request().getHeader("HX-Request") != null
                || "cors".equals(context.request().getHeader("Sec-Fetch-Mode"))
                || "same-origin".equals(context.request().getHeader("Sec-Fetch-Mode"));
    }
}
