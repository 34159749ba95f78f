package changeover.web.api;

import changeover.contracts.agreements.Agreement;
import changeover.contracts.agreements.Handover;
import changeover.contracts.agreements.HomesHandedOver;
import changeover.contracts.customers.AccessCodes;
import changeover.contracts.customers.Homes;
import changeover.web.session.Once;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Homes that change hands, and keys that go back; an agreement that should end is ended under its own address. */
@Path("/api/v1/{slug}/homes/{home}")
@RolesAllowed({"owner", "office"})
public class HandoversApi {

    /** @param agreement the one that followed the home; null where none did */
    public record HandedDocument(UUID home, @Nullable UUID agreement, List<HomesHandedOver.Past> handovers) {}

    /** @param kept what is in our hands, without what it says */
    public record KeysDocument(UUID home, List<AccessCodes.Listed> kept, List<AccessCodes.GivenBack> givenBack) {}

    @Inject
    Homes homes;

    @Inject
    HomesHandedOver handovers;

    @Inject
    AccessCodes codes;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    @GET
    @Path("handovers")
    @Transactional
    public HandedDocument past(@PathParam("home") UUID home) {
        known(home);
        return new HandedDocument(home, null, handovers.of(home));
    }

    /** {@code kind} (sold or let), {@code customer}, {@code day}, and {@code follows} where the agreement goes on with a new owner. */
    @POST
    @Path("handovers")
    public Response handOver(@PathParam("home") UUID home, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "handover " + home + body, () -> {
            known(home);
            Asked asked = Asked.of(body, json);
            String kind = asked.oneOf("kind", Set.of("sold", "let"));
            UUID customer = asked.id("customer");
            var day = asked.day("day");
            boolean follows = asked.yes("follows");
            asked.nothingElse().understood();
            UUID agreement = handovers
                    .handOver(new Handover(home, Handover.Kind.ofCode(kind), customer, day, follows))
                    .map(Agreement::id)
                    .orElse(null);
            return Once.Answer.done(new HandedDocument(home, agreement, handovers.of(home)));
        });
    }

    /** The keys and codes that are kept, and those that went back; none is said here. */
    @GET
    @Path("keys")
    @Transactional
    public KeysDocument keys(@PathParam("home") UUID home) {
        known(home);
        return document(home);
    }

    /** A key or a code went back: {@code givenTo} whom, on which {@code day}. */
    @POST
    @Path("keys/{code}/return")
    public Response giveBack(
            @PathParam("home") UUID home,
            @PathParam("code") UUID code,
            @HeaderParam("Operation-Id") String operation,
            String body) {
        return once.answer(operation, "key " + code + body, () -> {
            known(home);
            if (codes.list(home).stream().noneMatch(one -> one.id().equals(code))) {
                throw new NotFoundException();
            }
            Asked asked = Asked.of(body, json);
            String to = asked.text("givenTo", 200);
            var day = asked.day("day");
            asked.nothingElse().understood();
            codes.giveBack(home, code, to, day);
            return Once.Answer.done(document(home));
        });
    }

    private KeysDocument document(UUID home) {
        return new KeysDocument(home, codes.list(home), codes.givenBack(home));
    }

    private void known(UUID home) {
        if (homes.get(home).isEmpty()) {
            throw new NotFoundException();
        }
    }
}
