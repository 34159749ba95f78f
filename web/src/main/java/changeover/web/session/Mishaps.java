package changeover.web.session;

import changeover.contracts.tenants.Locales;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refusals;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.ForbiddenException;
import io.vertx.ext.web.RoutingContext;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.container.ContainerResponseContext;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.jboss.logging.Logger;
import org.jboss.resteasy.reactive.server.ServerExceptionMapper;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;

/**
 * What is said when something is not done: to pages in words, to the API as a problem document (RFC 9457). A refusal is
 * a sentence; a bug gets an id, its story goes to the log and never to the page.
 */
class Mishaps {

    private static final Logger LOG = Logger.getLogger(Mishaps.class);

    @CheckedTemplate(basePath = "session")
    static class Pages {
        static native TemplateInstance mishap(String heading, String sentence, String id, String language);

        private Pages() {}
    }

    @ServerExceptionMapper({ForbiddenException.class, NotFoundException.class})
    Response notHere(RoutingContext context) {
        return said(context, 404, notFound(locale(context)), "");
    }

    @ServerExceptionMapper
    Response refused(WebApplicationException failure, RoutingContext context) {
        int status = failure.getResponse().getStatus();
        return status >= 500 ? broken(failure, context) : notUnderstood(status, context);
    }

    private static Response notUnderstood(int status, RoutingContext context) {
        return said(context, status, fr(context) ? "Cette demande n’est pas comprise." : "This is not understood.", "");
    }

    /** The reader of forms throws what it cannot decode as it is. */
    private static boolean isBadlyEncoded(Exception failure) {
        StackTraceElement[] thrown = failure.getStackTrace();
        return failure instanceof IllegalArgumentException
                && thrown.length > 0
                && thrown[0].getClassName().endsWith(".URLUtils");
    }

    @ServerExceptionMapper
    Response broken(Exception failure, RoutingContext context) {
        List<Refusal> refusals = Desk.refusals(failure).orElse(List.of());
        if (!refusals.isEmpty()) {
            return refused(refusals, context);
        }
        if (isBadlyEncoded(failure)) {
            return notUnderstood(400, context);
        }
        String id = UUID.randomUUID().toString().substring(0, 8);
        LOG.errorf(failure, "mishap %s at %s", id, context.normalizedPath());
        return said(
                context,
                500,
                fr(context)
                        ? "Quelque chose s’est brisé chez nous. Rien n’a été changé. Dites-nous ce numéro : " + id
                        : "Something of ours broke. Nothing was changed. Tell us this number: " + id,
                id);
    }

    /** A form that stood open too long, or came from elsewhere, is turned away before anybody reads it: with a blank page, but for this. */
    @ServerResponseFilter
    void turnedAway(ContainerResponseContext response, RoutingContext context) {
        if (response.getStatus() == 400 && !response.hasEntity() && !isApi(context)) {
            String sentence = fr(context)
                    ? "Cette page est restée ouverte trop longtemps. Revenez en arrière, rechargez-la et envoyez de nouveau; rien n’a été changé."
                    : "This page stood open too long. Go back, load it anew and send it again; nothing was changed.";
            Response page = said(context, 400, sentence, "");
            response.setEntity(page.getEntity(), null, page.getMediaType());
        }
    }

    private static Response refused(List<Refusal> refusals, RoutingContext context) {
        Locale locale = locale(context);
        if (isApi(context)) {
            return Problem.of(422, refusals, locale).response();
        }
        String sentences = refusals.stream()
                .map(refusal -> Refusals.sentence(refusal, locale))
                .reduce((a, b) -> a + " " + b)
                .orElse("");
        return said(context, 422, sentences, "");
    }

    private static Response said(RoutingContext context, int status, String sentence, String id) {
        if (isApi(context)) {
            return Problem.of(status, sentence).response();
        }
        String heading =
                status == 404 ? (fr(context) ? "Rien ici" : "Nothing here") : (fr(context) ? "Pas fait" : "Not done");
        String page = Pages.mishap(heading, sentence, id, fr(context) ? "fr-CA" : "en")
                .render();
        return Response.status(status)
                .type("text/html;charset=UTF-8")
                .entity(page)
                .build();
    }

    private static String notFound(Locale locale) {
        return "fr".equals(locale.getLanguage())
                ? "Cette page n’existe pas, ou elle n’est pas à vous."
                : "There is no such page, or it is not yours.";
    }

    private static boolean isApi(RoutingContext context) {
        return context.normalizedPath().startsWith("/api/");
    }

    private static boolean fr(RoutingContext context) {
        return "fr".equals(locale(context).getLanguage());
    }

    /** The person's language where one is known, else what the browser asks for. */
    static Locale locale(RoutingContext context) {
        if (context.user() instanceof io.quarkus.vertx.http.runtime.security.QuarkusHttpUser user) {
            Object door = user.getSecurityIdentity().getAttribute(AtTheDoor.LANGUAGE);
            if (door instanceof String language) {
                return Locales.of(language);
            }
        }
        String accepts = context.request().getHeader("Accept-Language");
        return Locales.of(accepts == null ? "en" : accepts.strip().toLowerCase(Locale.ROOT));
    }
}
