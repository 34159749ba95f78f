package changeover.web.office;

import changeover.billing.tax.ContractForm;
import changeover.billing.tax.OwnTax;
import changeover.billing.tax.OwnTaxes;
import changeover.billing.tax.PropertyUse;
import changeover.billing.tax.TaxCategory;
import changeover.billing.tax.TaxConfirmation;
import changeover.billing.tax.TaxTables;
import changeover.billing.tax.Work;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Wording;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Said;
import changeover.web.session.SaidOnce;
import changeover.web.session.Tab;
import changeover.web.session.Typed;
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
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The dated taxes, each with its source; a place without a row refuses to issue until the owner adds one, a rate from memory
 * until the owner has read it.
 */
@Path("/{slug}/shop/taxes")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class TaxPages {

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance taxes(
                Frame frame,
                TaxRowsView view,
                TaxRowsView.@Nullable Charged charged,
                Said form,
                Said confirming,
                Said ending);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Today today;

    @Inject
    Desk desk;

    @Inject
    OwnTaxes own;

    @Inject
    TaxTables tables;

    @GET
    @Transactional
    public TemplateInstance list() {
        return page(null, fresh(), freshConfirming(), freshEnding());
    }

    /** Shows what the place charges then; on the owner's yes to what was shown the row is added. */
    @POST
    @RolesAllowed("owner")
    public Response add(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        if ("look".equals(fields.getFirst("do"))) {
            return desk.look(
                    () -> {
                        OwnTax.Facts facts = facts(typed);
                        typed.understood();
                        return again(typed, List.of(), facts);
                    },
                    refusals -> again(typed, refusals, null));
        }
        return desk.answer(
                () -> {
                    OwnTax.Facts facts = facts(typed);
                    typed.understood();
                    if (!TaxRowsView.Charged.seen(tables.tried(facts)).equals(fields.getFirst("seen"))) {
                        throw Refusal.of("tax.look-first").thrown();
                    }
                    own.add(facts);
                    return SaidOnce.at("/" + slug + "/shop/taxes", "kept");
                },
                refusals -> again(typed, refusals, looksFirst(refusals) ? facts(typed) : null));
    }

    private static boolean looksFirst(List<Refusal> refusals) {
        return refusals.stream().anyMatch(one -> one.code().equals("tax.look-first"));
    }

    private TemplateInstance again(Typed typed, List<Refusal> refusals, OwnTax.@Nullable Facts shown) {
        Said form = Said.again(typed, refusals, frames.locale());
        return page(shown, form, freshConfirming(), freshEnding());
    }

    private OwnTax.Facts facts(Typed typed) {
        return new OwnTax.Facts(
                typed.text("region", 10),
                choice(typed, "property", PropertyUse.values(), PropertyUse::code),
                choice(typed, "work", Work.values(), Work::code),
                choice(typed, "form", ContractForm.values(), ContractForm::code),
                own.all().size() + 1,
                typed.text("code", 20),
                new Wording(typed.text("labelEn", 60), typed.text("labelFr", 60)),
                typed.oneOf(
                        "category",
                        Arrays.stream(TaxCategory.values()).map(Enum::name).collect(Collectors.toSet())),
                typed.number("percent", BigDecimal.ZERO, BigDecimal.valueOf(100)),
                typed.line("registration", 40),
                typed.day("from"),
                typed.dayOrNone("until"),
                typed.text("source", 500));
    }

    /** Left open, it holds for all. */
    private static <T> @Nullable T choice(Typed typed, String field, T[] values, Function<T, String> code) {
        if (typed.line(field, 20) == null) {
            return null;
        }
        Set<String> codes = Arrays.stream(values).map(code).collect(Collectors.toSet());
        String chosen = typed.oneOf(field, codes);
        return Arrays.stream(values)
                .filter(one -> code.apply(one).equals(chosen))
                .findFirst()
                .orElseThrow();
    }

    @POST
    @Path("confirmations")
    @RolesAllowed("owner")
    public Response confirm(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    String row = typed.text("row", 120);
                    var facts = new TaxConfirmation.Facts(
                            typed.text("readIn", 500), typed.day("readOn"), typed.line("number", 40));
                    typed.understood();
                    tables.confirm(row, facts);
                    return SaidOnce.at("/" + slug + "/shop/taxes", "tax-confirmed");
                },
                refusals -> page(null, fresh(), Said.again(typed, refusals, frames.locale()), freshEnding()));
    }

    @POST
    @Path("last-days")
    @RolesAllowed("owner")
    public Response end(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    String row = typed.text("ended", 120);
                    LocalDate lastDay = typed.day("lastDay");
                    typed.understood();
                    own.end(row, lastDay);
                    return SaidOnce.at("/" + slug + "/shop/taxes", "kept");
                },
                refusals -> page(null, fresh(), freshConfirming(), Said.again(typed, refusals, frames.locale())));
    }

    private Said fresh() {
        return Said.filled(Map.of("from", today.day().toString(), "category", "S"));
    }

    private Said freshConfirming() {
        return Said.filled(Map.of("readOn", today.day().toString()));
    }

    private Said freshEnding() {
        return Said.filled(Map.of("lastDay", today.day().toString()));
    }

    private TemplateInstance page(OwnTax.@Nullable Facts tried, Said form, Said confirming, Said ending) {
        Frame frame = frames.of(Tab.SHOP);
        TaxRowsView view = TaxRowsView.of(own.rows(), tables.shipped(), today.day(), frame);
        return Pages.taxes(frame, view, tried == null ? null : charged(tried, frame), form, confirming, ending);
    }

    private TaxRowsView.Charged charged(OwnTax.Facts tried, Frame frame) {
        return TaxRowsView.Charged.of(tables.tried(tried), OwnTax.add(tried).row(), frame);
    }
}
