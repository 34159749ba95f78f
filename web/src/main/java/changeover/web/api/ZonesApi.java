package changeover.web.api;

import changeover.billing.pricing.TravelZone;
import changeover.billing.pricing.Zones;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Wording;
import changeover.web.session.Once;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** The zones of travel: homes whose postal code begins so, or so near the shop; what a trip there costs stands in the price book. */
@Path("/api/v1/{slug}/prices/zones")
@RolesAllowed({"owner", "office"})
public class ZonesApi {

    /**
     * A zone as the API says it.
     *
     * @param postals beginnings of postal codes
     * @param withinKm null for a zone of postal codes alone
     * @param closed from that day on the zone is no more
     */
    public record ZoneDocument(
            String code,
            Wording name,
            List<Beginning> postals,
            @Nullable Integer withinKm,
            LocalDate from,
            boolean closed) {}

    public record Beginning(String begins) {}

    @Inject
    Zones zones;

    @Inject
    Today today;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    /** Every row, the newest of a zone holds. */
    @GET
    @Transactional
    public List<ZoneDocument> all() {
        return zones.all().zones().stream()
                .sorted(Comparator.comparing(TravelZone::code).thenComparing(TravelZone::from))
                .map(ZonesApi::document)
                .toList();
    }

    /**
     * A zone from a day on: {@code code, nameEn, nameFr}, {@code postals} (objects with {@code begins}) or {@code withinKm},
     * optionally {@code from} (today) and {@code closed}.
     */
    @POST
    @RolesAllowed("owner")
    public Response set(@PathParam("slug") String slug, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "zones " + body, () -> {
            Asked asked = Asked.of(body, json);
            var zone = new TravelZone(
                    asked.text("code", 30).toLowerCase(Locale.ROOT),
                    new Wording(asked.text("nameEn", 60), asked.text("nameFr", 60)),
                    beginnings(asked),
                    asked.value("withinKm") == null ? null : asked.whole("withinKm", 1, 2_000),
                    asked.value("from") == null ? today.day() : asked.day("from"),
                    asked.yes("closed"));
            asked.nothingElse().understood();
            zones.set(zone);
            return Once.Answer.made("/api/v1/" + slug + "/prices/zones", document(zone));
        });
    }

    private static List<String> beginnings(Asked asked) {
        return asked.each("postals").stream()
                .map(one -> {
                    String begins = one.text("begins", 12);
                    one.nothingElse();
                    return TravelZone.bare(begins);
                })
                .filter(one -> !one.isEmpty())
                .distinct()
                .sorted()
                .toList();
    }

    private static ZoneDocument document(TravelZone zone) {
        return new ZoneDocument(
                zone.code(),
                zone.name(),
                zone.postals().stream().map(Beginning::new).toList(),
                zone.withinKm(),
                zone.from(),
                zone.closed());
    }
}
