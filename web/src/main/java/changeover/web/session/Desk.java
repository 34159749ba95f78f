package changeover.web.session;

import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.words.Constraints;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refused;
import io.quarkus.qute.TemplateInstance;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;

/**
 * How every form is answered: the deed in one transaction, then a redirect; when it is refused, by a rule or by the
 * database, the deed is rolled back and the form comes back as typed with the sentences in it.
 */
@ApplicationScoped
public class Desk {

    private static final String PAGE = "text/html;charset=UTF-8";

    @Inject
    CurrentTenant current;

    @Inject
    SentForms sent;

    @Inject
    SaidOnce said;

    /**
     * A form that comes twice is done once and leads twice to the same place.
     *
     * @param deed what the form asks for; its answer is where to go next, inside the business
     * @param again the form once more, made in a transaction of its own; status 422
     */
    public Response answer(Callable<String> deed, Function<List<Refusal>, TemplateInstance> again) {
        return attempt(() -> goTo(sent.once(deed, path -> path, path -> path)), again);
    }

    /**
     * As {@link #answer}, where the deed's own page is the answer: shown once, kept in no cache. A form that comes twice
     * shows nothing of it, and the page says why.
     */
    public Response show(Callable<TemplateInstance> deed, Function<List<Refusal>, TemplateInstance> again) {
        return attempt(
                () -> sent.once(() -> page(deed.call()), _ -> "", _ -> {
                    said.here("sent-before");
                    return page(again.apply(List.of()));
                }),
                again);
    }

    /** As {@link #attempt}, for a page. */
    public Response look(Callable<TemplateInstance> reading, Function<List<Refusal>, TemplateInstance> again) {
        return attempt(() -> page(reading.call()), again);
    }

    /** What is only read, a page or a file: asked again, it is answered again. */
    public Response attempt(Callable<Response> deed, Function<List<Refusal>, TemplateInstance> again) {
        try {
            return current.run(current.id(), current.person(), deed);
        } catch (RuntimeException failure) {
            return refuse(refusals(failure).orElseThrow(() -> failure), again);
        }
    }

    /** The form comes back before anything was tried. */
    public Response refuse(List<Refusal> refusals, Function<List<Refusal>, TemplateInstance> again) {
        String page = current.run(
                current.id(), current.person(), () -> again.apply(refusals).render());
        return Response.status(422).type(PAGE).entity(page).build();
    }

    private static Response page(TemplateInstance page) {
        return Response.ok(page.render(), PAGE)
                .header("Cache-Control", "no-store")
                .build();
    }

    public static Response goTo(String path) {
        return Response.seeOther(URI.create(path)).build();
    }

    /** The sentences that a failure stands for, wherever they hide; empty when it is a bug. */
    public static Optional<List<Refusal>> refusals(Throwable failure) {
        for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
            if (cause instanceof Refused refused) {
                return Optional.of(refused.refusals());
            }
        }
        return Constraints.refusal(failure).map(List::of);
    }
}
