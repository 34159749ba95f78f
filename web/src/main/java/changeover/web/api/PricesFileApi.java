package changeover.web.api;

import changeover.billing.pricesfile.PriceChange;
import changeover.billing.pricesfile.PriceFault;
import changeover.billing.pricesfile.PricesFile;
import changeover.billing.pricing.PriceRow;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refusals;
import changeover.web.session.CsvAnswer;
import changeover.web.session.Once;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The price file over the API: brought in, dry or for good, and taken out. */
@Path("/api/v1/{slug}")
@RolesAllowed({"owner", "office"})
public class PricesFileApi {

    /** @param changes new and changed rows, with what held before */
    public record PricesImport(
            boolean dry, int written, long unchanged, List<PriceChanged> changes, List<BadPrice> bad) {}

    public record PriceChanged(
            int row,
            String what,
            String kind,
            String item,
            LocalDate from,
            @Nullable Figures before,
            Figures now) {}

    /** @param price null where a mark-up makes it of the cost */
    public record Figures(@Nullable Amount price, @Nullable Amount cost) {}

    public record BadPrice(int row, String column, String code, String reason) {}

    @Inject
    PricesFile file;

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    @Inject
    Once once;

    /**
     * @param bad {@code refuse}: all or nothing; {@code return}: good rows in, the bad ones said
     * @param from the first day of rows that name none; today when left out
     */
    @POST
    @Path("imports/prices")
    @RolesAllowed("owner")
    @Consumes({"text/csv", "application/octet-stream", "text/plain"})
    public Response bring(
            @QueryParam("dry") @DefaultValue("false") boolean dry,
            @QueryParam("bad") @DefaultValue("refuse") String bad,
            @QueryParam("from") @Nullable String from,
            @HeaderParam("Operation-Id") String operation,
            byte[] csv) {
        if (!bad.equals("refuse") && !bad.equals("return")) {
            throw Refusal.of("homesfile.bad").at("bad").thrown();
        }
        String asked = "imports/prices " + dry + bad + from + UUID.nameUUIDFromBytes(csv);
        return once.answer(operation, asked, () -> {
            LocalDate day = from == null ? today.day() : AskedInQuery.day("from", from);
            PricesFile.Outcome outcome = file.bring(csv, day, dry, bad.equals("refuse"));
            Locale locale = businesses.current().locale();
            return Once.Answer.done(new PricesImport(
                    dry,
                    outcome.written(),
                    outcome.count(PriceChange.What.UNCHANGED),
                    outcome.changes().stream()
                            .filter(change -> change.what() != PriceChange.What.UNCHANGED)
                            .map(PricesFileApi::changed)
                            .toList(),
                    outcome.faults().stream().map(fault -> bad(fault, locale)).toList()));
        });
    }

    @GET
    @Path("exports/prices.csv")
    @Produces("text/csv")
    @Transactional
    public Response take() {
        return CsvAnswer.of(file.take(), "prices");
    }

    private static PriceChanged changed(PriceChange change) {
        PriceRow now = change.now();
        PriceRow before = change.before();
        return new PriceChanged(
                change.row(),
                change.what().name().toLowerCase(Locale.ROOT),
                now.kind().code(),
                now.code(),
                now.from(),
                before == null ? null : figures(before),
                figures(now));
    }

    private static Figures figures(PriceRow row) {
        return new Figures(amount(row.price()), amount(row.cost()));
    }

    private static @Nullable Amount amount(@Nullable Money money) {
        return money == null ? null : Amount.of(money);
    }

    private static BadPrice bad(PriceFault fault, Locale locale) {
        return new BadPrice(fault.row(), fault.column(), fault.why().code(), Refusals.sentence(fault.why(), locale));
    }
}
