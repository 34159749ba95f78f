package changeover.web.session;

import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refusals;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * One sentence about what was just done, carried by its code in the address that a form leads to; what is not one of our
 * own sentences is not said.
 */
@ApplicationScoped
public class SaidOnce {

    private static final String SAID = "said";

    @Inject
    RoutingContext request;

    /** Where to go next, and what to say there: the sentences are {@code said.…} beside the refusals. */
    public static String at(String path, String code) {
        return path + (path.contains("?") ? "&" : "?") + "said=" + code;
    }

    /** Says it on the page that is this request's own answer. */
    void here(String code) {
        request.put(SAID, code);
    }

    @Nullable
    String sentence(Locale locale) {
        String here = request.get(SAID);
        String code = here == null ? request.request().getParam(SAID) : here;
        return code != null && Refusals.knows("said." + code)
                ? Refusals.sentence(Refusal.of("said." + code), locale)
                : null;
    }
}
