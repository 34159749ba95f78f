package changeover.web.api;

import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.catalogue.TradeUnit;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Wording;
import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.Parts;
import changeover.web.session.Once;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Response;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Parts: those the business carries under codes of its own, and the shipped kinds that they are of. */
@Path("/api/v1/{slug}/parts")
@RolesAllowed({"owner", "office", "technician"})
public class PartsApi {

    private static final Set<String> UNITS =
            Arrays.stream(TradeUnit.values()).map(TradeUnit::code).collect(Collectors.toUnmodifiableSet());

    /**
     * A part as the API says it.
     *
     * @param origin own: carried by the business; shipped: a kind of the catalogue, which own parts name in {@code kind}
     * @param unit UN/ECE Recommendation 20 code
     * @param size which one of its kind, as the machine's card says it; null when any will do
     */
    public record PartDocument(
            String origin,
            String code,
            Wording name,
            String unit,
            Wording unitName,
            @Nullable String kind,
            @Nullable String size) {}

    @Inject
    Parts parts;

    @Inject
    OwnCatalogue trade;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    /** The business's own parts by name, then the shipped kinds. */
    @GET
    @Transactional
    public List<PartDocument> all() {
        return Stream.concat(
                        parts.all().stream().map(PartsApi::document),
                        trade.catalogue().parts().stream()
                                .map(kind -> new PartDocument(
                                        "shipped",
                                        kind.code(),
                                        kind.wording(),
                                        kind.unit(),
                                        unitName(kind.unit()),
                                        null,
                                        null)))
                .toList();
    }

    /** One of the business's own parts, with its ETag. */
    @GET
    @Path("{code}")
    @Transactional
    public Response one(@PathParam("code") String code) {
        KnownPart part = parts.find(code).orElseThrow(NotFoundException::new);
        return Edition.of(document(part), parts.edition(code).orElseThrow());
    }

    /** A new part: {@code code, nameEn, nameFr}, optionally {@code unit} (C62 when missing), {@code kind, size}. */
    @POST
    @RolesAllowed({"owner", "office"})
    public Response add(@PathParam("slug") String slug, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "parts " + body, () -> {
            Asked asked = Asked.of(body, json);
            KnownPart part = part(asked.text("code", 60), asked);
            asked.nothingElse().understood();
            if (parts.find(part.code()).isPresent()) {
                throw Refusal.of("stock.part-there").at("code").thrown();
            }
            return Once.Answer.made("/api/v1/" + slug + "/parts/" + part.code(), document(parts.keep(part)));
        });
    }

    /** Writes a part anew on the edition that If-Match names; its code stays. */
    @PUT
    @Path("{code}")
    @RolesAllowed({"owner", "office"})
    public Response rewrite(
            @PathParam("code") String code,
            @HeaderParam("If-Match") String ifMatch,
            @HeaderParam("Operation-Id") String operation,
            String body) {
        return once.answer(operation, "parts " + code + " " + ifMatch + body, () -> {
            int edition = parts.edition(code).orElseThrow(NotFoundException::new);
            Edition.filledOn(ifMatch).mustBe(edition);
            Asked asked = Asked.of(body, json);
            KnownPart part = part(code, asked);
            asked.nothingElse().understood();
            return Once.Answer.done(document(parts.keep(part)));
        });
    }

    private static KnownPart part(String code, Asked asked) {
        return new KnownPart(
                code,
                new Wording(asked.text("nameEn", 120), asked.text("nameFr", 120)),
                asked.value("unit") == null ? TradeUnit.C62.code() : asked.oneOf("unit", UNITS),
                asked.line("kind", 60),
                asked.line("size", 60));
    }

    private static PartDocument document(KnownPart part) {
        return new PartDocument(
                "own", part.code(), part.name(), part.unit(), unitName(part.unit()), part.kind(), part.size());
    }

    private static Wording unitName(String code) {
        return TradeUnit.find(code).map(TradeUnit::wording).orElse(new Wording(code, code));
    }
}
