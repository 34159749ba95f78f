package changeover.web.api;

import changeover.billing.pricing.ItemKind;
import changeover.billing.pricing.PriceBook;
import changeover.billing.pricing.PriceEntry;
import changeover.billing.pricing.PriceRow;
import changeover.billing.pricing.Prices;
import changeover.billing.pricing.Zones;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import changeover.scheduling.stock.Parts;
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
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** The price book: labour, trips and parts, each price from its first day until a newer one begins. */
@Path("/api/v1/{slug}/prices")
@RolesAllowed({"owner", "office"})
public class PricesApi {

    /**
     * A price as the API says it.
     *
     * @param kind part, labour or travel
     * @param item the part's code; {@code hour, after-hours, weekend, holiday} for labour; {@code visit, no-access} or a
     *     zone's code for travel
     * @param cost what the business pays; null where nobody wrote it down
     * @param markUp the percent on the cost that made the price; null where a person wrote it
     */
    public record PriceDocument(
            String kind,
            String item,
            Amount price,
            @Nullable Amount cost,
            LocalDate from,
            @Nullable String markUp) {}

    @Inject
    Prices prices;

    @Inject
    Parts parts;

    @Inject
    Zones zones;

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    /** Every item's price on the day, which is today when none is named. */
    @GET
    @Transactional
    public List<PriceDocument> on(@Nullable @QueryParam("day") String said) {
        LocalDate day = said == null ? today.day() : AskedInQuery.day("day", said);
        PriceBook book = prices.book();
        return book.asOf(day).stream().map(PricesApi::document).toList();
    }

    /**
     * A price from a day on: {@code kind, price}, for a part its {@code item}, optionally {@code cost} and {@code from}
     * (today). A part with a cost and no price follows its mark-up. The same item and day again corrects it; what was issued
     * keeps what it says.
     */
    @POST
    @RolesAllowed("owner")
    public Response set(@PathParam("slug") String slug, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "prices " + body, () -> {
            Asked asked = Asked.of(body, json);
            Currency currency = businesses.current().currency();
            ItemKind kind = ItemKind.of(kindOf(asked));
            LocalDate from = asked.value("from") == null ? today.day() : asked.day("from");
            String item = item(kind, asked, from);
            Money cost = asked.value("cost") == null ? null : asked.money("cost", currency);
            boolean byMarkUp = kind == ItemKind.PART && cost != null && asked.value("price") == null;
            Money price = byMarkUp ? null : asked.money("price", currency);
            asked.nothingElse().understood();
            prices.write(new PriceRow(kind, item, null, price, cost, from));
            PriceEntry entry = prices.of(List.of(item)).on(kind, item, from).orElseThrow();
            return Once.Answer.made("/api/v1/" + slug + "/prices?day=" + from, document(entry));
        });
    }

    private static String kindOf(Asked asked) {
        String kind = asked.oneOf("kind", Set.of("part", "labour", "travel"));
        return kind.isEmpty() ? "part" : kind;
    }

    /** A part must be one that the business carries, a trip one of its own or to one of its zones. */
    private String item(ItemKind kind, Asked asked, LocalDate from) {
        if (kind == ItemKind.PART) {
            String code = asked.text("item", 60);
            if (!code.isEmpty() && parts.find(code).isEmpty()) {
                asked.refuse(Refusal.of("stock.part-not-found").at("item"));
            }
            return code;
        }
        Set<String> known = new TreeSet<>(
                kind == ItemKind.LABOUR ? PriceBook.LABOUR : List.of(PriceBook.VISIT, PriceBook.NO_ACCESS));
        if (kind == ItemKind.TRAVEL) {
            zones.all().on(from).forEach(zone -> known.add(zone.code()));
        }
        String usual = kind == ItemKind.LABOUR ? PriceBook.HOUR : PriceBook.VISIT;
        return asked.value("item") == null ? usual : asked.oneOf("item", known);
    }

    private static PriceDocument document(PriceEntry entry) {
        return new PriceDocument(
                entry.kind().code(),
                entry.code(),
                Amount.of(entry.price()),
                entry.cost() == null ? null : Amount.of(entry.cost()),
                entry.from(),
                entry.by() == null || entry.by().percent() == null
                        ? null
                        : entry.by().percent().stripTrailingZeros().toPlainString());
    }
}
