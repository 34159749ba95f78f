package changeover.web.office;

import changeover.billing.pricing.ItemKind;
import changeover.billing.pricing.PriceBook;
import changeover.billing.pricing.Prices;
import changeover.billing.pricing.TravelZone;
import changeover.billing.pricing.Zones;
import changeover.contracts.tenants.BusinessProfile;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Wording;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Said;
import changeover.web.session.SaidOnce;
import changeover.web.session.Tab;
import changeover.web.session.Typed;
import changeover.web.session.Written;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The zones of travel, and where the shop stands, from which distances are reckoned. */
@Path("/{slug}/shop/prices/zones")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class ZonePages {

    /** @param fee empty where the ordinary one is asked */
    public record Row(String code, String name, String where, String from, String fee, boolean coming) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance zones(Frame frame, List<Row> rows, boolean placed, Said form, Said shop);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Today today;

    @Inject
    Desk desk;

    @Inject
    Zones zones;

    @Inject
    Prices prices;

    @Inject
    Businesses businesses;

    @GET
    @Transactional
    public TemplateInstance page() {
        return page(fresh(), place());
    }

    @POST
    @RolesAllowed("owner")
    public Response set(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    String code = typed.text("code", 30).toLowerCase(Locale.ROOT);
                    var name = new Wording(typed.text("nameEn", 60), typed.text("nameFr", 60));
                    String postals = typed.line("postals", 2_000);
                    BigDecimal km = typed.numberOrNone("withinKm", 1, 2_000);
                    LocalDate from = typed.day("from");
                    if (km != null) {
                        typed.whole("withinKm", 1, 2_000);
                    }
                    typed.understood();
                    zones.set(new TravelZone(
                            code,
                            name,
                            beginnings(postals == null ? "" : postals),
                            km == null ? null : km.intValueExact(),
                            from,
                            typed.ticked("closed")));
                    return SaidOnce.at("/" + slug + "/shop/prices/zones", "kept");
                },
                refusals -> page(Said.again(typed, refusals, frames.locale()), place()));
    }

    @POST
    @Path("shop")
    @RolesAllowed("owner")
    public Response standAt(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    BigDecimal north = typed.numberOrNone("latitude", -90, 90);
                    BigDecimal east = typed.numberOrNone("longitude", -180, 180);
                    typed.understood();
                    businesses.profile().standsAt(north, east);
                    businesses.keep();
                    return SaidOnce.at("/" + slug + "/shop/prices/zones", "kept");
                },
                refusals -> page(fresh(), Said.again(typed, refusals, frames.locale())));
    }

    /** {@code X0X 1, X1-y; X2}: each as it is compared, none twice. */
    static List<String> beginnings(String typed) {
        return Arrays.stream(typed.split("[,;\\n]"))
                .map(TravelZone::bare)
                .filter(one -> !one.isEmpty())
                .distinct()
                .sorted()
                .toList();
    }

    private Said fresh() {
        return Said.filled(Map.of("from", today.day().toString()));
    }

    private Said place() {
        BusinessProfile profile = businesses.profile();
        Locale locale = frames.locale();
        return Said.filled(Map.of(
                "latitude",
                profile.latitude().map(degrees -> Written.of(degrees, locale)).orElse(""),
                "longitude",
                profile.longitude().map(degrees -> Written.of(degrees, locale)).orElse("")));
    }

    private TemplateInstance page(Said form, Said shop) {
        Frame frame = frames.of(Tab.SHOP);
        LocalDate day = today.day();
        PriceBook book = prices.book();
        var all = zones.all();
        List<TravelZone> held = all.on(day);
        List<Row> rows = all.zones().stream()
                .filter(zone -> held.contains(zone) || zone.from().isAfter(day))
                .sorted(Comparator.comparing(TravelZone::from).thenComparing(TravelZone::code))
                .map(zone -> row(zone, book, day, frame))
                .toList();
        return Pages.zones(frame, rows, businesses.profile().latitude().isPresent(), form, shop);
    }

    private static Row row(TravelZone zone, PriceBook book, LocalDate today, Frame frame) {
        LocalDate day = zone.from().isAfter(today) ? zone.from() : today;
        String fee = book.on(ItemKind.TRAVEL, zone.code(), day)
                .map(entry -> entry.price().format(frame.locale()))
                .orElse("");
        return new Row(
                zone.code(),
                zone.name().in(frame.locale()),
                where(zone).in(frame.locale()),
                frame.brief(zone.from()),
                fee,
                zone.from().isAfter(today));
    }

    private static Wording where(TravelZone zone) {
        if (zone.closed()) {
            return new Wording("no more", "n’est plus");
        }
        String postals = String.join(", ", zone.postals());
        if (zone.withinKm() == null) {
            return new Wording(postals, postals);
        }
        String before = postals.isEmpty() ? "" : postals + "; ";
        return new Wording(
                before + "within " + zone.withinKm() + " km", before + "à " + zone.withinKm() + "\u00a0km au plus");
    }
}
