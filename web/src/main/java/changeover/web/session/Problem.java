package changeover.web.session;

import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refusals;
import com.fasterxml.jackson.annotation.JsonInclude;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * What the API says when something is not done, as RFC 9457 lays it out: {@code refusal} is the sentence, and where the
 * request had several faults each stands in {@code refusals} with its field.
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Problem(
        String type,
        String title,
        int status,
        String refusal,
        @Nullable List<Fault> refusals) {

    /** One fault: the field it is about, its code, its sentence. */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    public record Fault(@Nullable String field, String code, String sentence) {}

    public static Problem of(int status, String sentence) {
        return new Problem("about:blank", title(status), status, sentence, null);
    }

    public static Problem of(int status, List<Refusal> refusals, Locale locale) {
        List<Fault> faults = refusals.stream()
                .map(refusal -> new Fault(refusal.field(), refusal.code(), Refusals.sentence(refusal, locale)))
                .toList();
        return new Problem(
                "about:blank", title(status), status, faults.getFirst().sentence(), faults);
    }

    public Response response() {
        return Response.status(status)
                .type("application/problem+json")
                .entity(this)
                .build();
    }

    private static String title(int status) {
        Response.Status known = Response.Status.fromStatusCode(status);
        return known == null ? "Not done" : known.getReasonPhrase();
    }
}
