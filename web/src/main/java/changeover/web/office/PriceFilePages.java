package changeover.web.office;

import changeover.billing.pricesfile.PriceChange;
import changeover.billing.pricesfile.PriceFault;
import changeover.billing.pricesfile.PricesFile;
import changeover.billing.pricing.PriceRow;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refusals;
import changeover.web.session.CsvAnswer;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Said;
import changeover.web.session.Tab;
import changeover.web.session.Typed;
import changeover.web.session.Uploaded;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Function;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import org.jspecify.annotations.Nullable;

/** The price file at the desk: what it changes is shown first, and written on a yes; the whole book is taken out. */
@Path("/{slug}/shop/prices/file")
@RolesAllowed({"owner", "office"})
public class PriceFilePages {

    /** As many rows of each list stand on the page. */
    private static final int SHOWN = 300;

    /** @param kind new, changed or unchanged */
    public record Row(int row, String kind, String what, String from, String before, String now) {}

    public record Wrong(int row, String column, String why) {}

    /**
     * @param carried the file itself for the yes, empty where it is too large to come back with a form
     */
    public record Result(
            boolean dry,
            int written,
            long fresh,
            long changed,
            long unchanged,
            int bad,
            List<Row> rows,
            List<Wrong> wrongs,
            int more,
            String carried,
            String seen,
            String day) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance pricefile(Frame frame, String columns, @Nullable Result result, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Today today;

    @Inject
    Desk desk;

    @Inject
    PricesFile file;

    @Inject
    PriceNames names;

    @GET
    @Produces(MediaType.TEXT_HTML)
    @Transactional
    public TemplateInstance page() {
        return page(null, Said.filled(Map.of("day", today.day().toString())));
    }

    @GET
    @Path("prices.csv")
    @Transactional
    public Response take() {
        return CsvAnswer.of(file.take(), "prices");
    }

    /** @param what look, all (or nothing), or good (rows in, the refused stay out) */
    @POST
    @RolesAllowed("owner")
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    @Produces(MediaType.TEXT_HTML)
    public Response bring(
            @RestForm("file") @Nullable FileUpload chosen,
            @RestForm("carried") @Nullable String carried,
            @RestForm("seen") @Nullable String seen,
            @RestForm("day") @Nullable String day,
            @RestForm("what") @Nullable String what) {
        byte[] uploaded = Uploaded.bytes(chosen);
        var fields = new MultivaluedHashMap<String, String>();
        fields.putSingle("day", day == null ? "" : day);
        var typed = new Typed(fields);
        Callable<TemplateInstance> deed = () -> {
            byte[] bytes = uploaded.length > 0 ? uploaded : CarriedFile.open(carried == null ? "" : carried);
            LocalDate first = typed.day("day");
            typed.understood();
            if (bytes.length == 0) {
                throw Refusal.of("pricesfile.choose").at("file").thrown();
            }
            return page(
                    result(bytes, first, what, seen, frames.locale()), Said.filled(Map.of("day", first.toString())));
        };
        Function<List<Refusal>, TemplateInstance> again =
                refusals -> page(null, Said.again(typed, refusals, frames.locale()));
        return isYes(what) ? desk.show(deed, again) : desk.look(deed, again);
    }

    private static boolean isYes(@Nullable String what) {
        return "all".equals(what) || "good".equals(what);
    }

    private Result result(byte[] bytes, LocalDate day, @Nullable String what, @Nullable String seen, Locale locale) {
        boolean yes = isYes(what);
        PricesFile.Outcome looked = file.bring(bytes, day, true, false);
        boolean dry = !yes || !looked.seen().equals(seen);
        PricesFile.Outcome outcome = dry ? looked : file.bring(bytes, day, false, "all".equals(what));
        Frame frame = frames.of(Tab.SHOP);
        Map<String, String> called = names.names(locale);
        List<Row> rows = outcome.changes().stream()
                .filter(change -> change.what() != PriceChange.What.UNCHANGED)
                .limit(SHOWN)
                .map(change -> row(change, called, frame))
                .toList();
        long changes = outcome.count(PriceChange.What.NEW) + outcome.count(PriceChange.What.CHANGED);
        return new Result(
                dry,
                outcome.written(),
                outcome.count(PriceChange.What.NEW),
                outcome.count(PriceChange.What.CHANGED),
                outcome.count(PriceChange.What.UNCHANGED),
                outcome.faults().size(),
                rows,
                outcome.faults().stream()
                        .limit(SHOWN)
                        .map(fault -> wrong(fault, locale))
                        .toList(),
                (int) (changes - rows.size()),
                dry ? CarriedFile.close(bytes) : "",
                looked.seen(),
                day.toString());
    }

    private static Row row(PriceChange change, Map<String, String> called, Frame frame) {
        PriceRow now = change.now();
        PriceRow before = change.before();
        return new Row(
                change.row(),
                change.what().name().toLowerCase(Locale.ROOT),
                called.getOrDefault(PriceNames.key(now.kind(), now.code()), now.code()),
                frame.brief(now.from()),
                before == null ? "" : said(before, frame.locale()),
                said(now, frame.locale()));
    }

    /** {@code $38.00, cost $15.75}; without a price only the cost, which a mark-up makes a price of. */
    private static String said(PriceRow row, Locale locale) {
        String cost = row.cost() == null
                ? ""
                : (locale.getLanguage().equals("fr") ? "coût " : "cost ")
                        + row.cost().format(locale);
        Money price = row.price();
        return price == null ? cost : price.format(locale) + (cost.isEmpty() ? "" : ", " + cost);
    }

    private static Wrong wrong(PriceFault fault, Locale locale) {
        return new Wrong(fault.row(), fault.column(), Refusals.sentence(fault.why(), locale));
    }

    private TemplateInstance page(@Nullable Result result, Said form) {
        return Pages.pricefile(frames.of(Tab.SHOP), PricesFile.columns(), result, form);
    }
}
