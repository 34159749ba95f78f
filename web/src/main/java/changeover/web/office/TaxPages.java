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
import java.util.Arrays;
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
        static native TemplateInstance taxes(Frame frame, TaxRowsView view, Said form, Said confirming);

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
        return page(fresh(), freshConfirming());
    }

    @POST
    @RolesAllowed("owner")
    public Response add(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    OwnTax.Facts facts = facts(typed);
                    typed.understood();
                    own.add(facts);
                    return SaidOnce.at("/" + slug + "/shop/taxes", "kept");
                },
                refusals -> page(Said.again(typed, refusals, frames.locale()), freshConfirming()));
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
                refusals -> page(fresh(), Said.again(typed, refusals, frames.locale())));
    }

    private Said fresh() {
        return Said.filled(Map.of("from", today.day().toString(), "category", "S"));
    }

    private Said freshConfirming() {
        return Said.filled(Map.of("readOn", today.day().toString()));
    }

    private TemplateInstance page(Said form, Said confirming) {
        Frame frame = frames.of(Tab.SHOP);
        return Pages.taxes(frame, TaxRowsView.of(own.rows(), tables.shipped(), frame), form, confirming);
    }
}
