package changeover.web.api;

import changeover.contracts.merging.AlikeHomes;
import changeover.contracts.merging.HomeMerges;
import changeover.contracts.merging.Likeness;
import changeover.web.session.Once;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Homes that look like one, over the API: offered in pairs, and said to be two. */
@Path("/api/v1/{slug}/homes/alike")
@RolesAllowed({"owner", "office"})
public class AlikeHomesApi {

    /** @param common what the two share: street, person, telephone */
    public record PairDocument(SideDocument one, SideDocument other, List<String> common) {}

    public record SideDocument(
            UUID id,
            String street,
            @Nullable String unit,
            String city,
            @Nullable String postal,
            Set<String> people,
            Set<String> telephones) {}

    @Inject
    AlikeHomes alike;

    @Inject
    HomeMerges merges;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    @GET
    @Transactional
    public List<PairDocument> all() {
        return alike.all().stream()
                .map(two -> new PairDocument(
                        side(two.one()),
                        side(two.other()),
                        two.common().stream()
                                .map(one -> one.name().toLowerCase(Locale.ROOT))
                                .sorted()
                                .toList()))
                .toList();
    }

    /** {@code home, other} are two after all. */
    @POST
    @Path("apart")
    public Response apart(@HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "homes/alike/apart " + body, () -> {
            Asked asked = Asked.of(body, json);
            UUID home = asked.id("home");
            UUID other = asked.id("other");
            asked.nothingElse().understood();
            merges.keepApart(home, other);
            return Once.Answer.done(List.of(home, other));
        });
    }

    private static SideDocument side(Likeness.Dwelling home) {
        return new SideDocument(
                home.id(),
                home.street(),
                home.unitLabel(),
                home.city(),
                home.postal(),
                home.people(),
                home.telephones());
    }
}
