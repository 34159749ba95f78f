package changeover.web.api;

import changeover.billing.tax.ContractForm;
import changeover.billing.tax.OwnTax;
import changeover.billing.tax.OwnTaxes;
import changeover.billing.tax.PropertyUse;
import changeover.billing.tax.Tax;
import changeover.billing.tax.TaxCategory;
import changeover.billing.tax.TaxConfirmation;
import changeover.billing.tax.TaxRow;
import changeover.billing.tax.TaxTables;
import changeover.billing.tax.Work;
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
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The dated taxes with their sources: those that come with the product, what the owner confirmed, and the business's own. */
@Path("/api/v1/{slug}/taxes")
@RolesAllowed({"owner", "office"})
public class TaxesApi {

    /**
     * A row as the API says it.
     *
     * @param row what a confirmation names it by
     * @param own whether the business added it
     * @param property, work, form null for all
     * @param read whether its source was read; what is from memory issues nothing until the owner confirms it
     */
    public record TaxDocument(
            String row,
            boolean own,
            String region,
            @Nullable String property,
            @Nullable String work,
            @Nullable String form,
            String tax,
            Wording label,
            String category,
            String percent,
            LocalDate from,
            @Nullable LocalDate until,
            String source,
            boolean read) {}

    @Inject
    OwnTaxes own;

    @Inject
    TaxTables tables;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    /** A row that was not added, and what its place charges from its first day on once it is. */
    public record TriedDocument(List<TaxDocument> charged) {}

    @GET
    @Transactional
    public List<TaxDocument> all() {
        return Stream.concat(
                        own.rows().stream().map(row -> document(row, true)),
                        tables.shipped().stream().map(row -> document(row, false)))
                .toList();
    }

    /**
     * A tax of the business's own: {@code region, tax, labelEn, labelFr, category, percent, from, source}, optionally {@code
     * property, work, form, until, registration}; it takes the place of ours under the same code, the place's other taxes stay.
     */
    @POST
    @RolesAllowed("owner")
    public Response add(@PathParam("slug") String slug, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "taxes " + body, () -> {
            OwnTax.Facts facts = facts(body);
            return Once.Answer.made(
                    "/api/v1/" + slug + "/taxes", document(own.add(facts).row(), true));
        });
    }

    /** The same document as a tax of the business's own; nothing is kept, and the answer is what the place charges then. */
    @POST
    @Path("trials")
    @RolesAllowed("owner")
    public Response tried(@HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "tax trials " + body, () -> {
            List<TaxRow> theirs = own.rows();
            OwnTax.Facts facts = facts(body);
            TaxRow added = OwnTax.add(facts).row();
            return Once.Answer.done(new TriedDocument(tables.tried(facts).stream()
                    .map(row -> document(row, row.equals(added) || theirs.contains(row)))
                    .toList()));
        });
    }

    private OwnTax.Facts facts(String body) {
        Asked asked = Asked.of(body, json);
        var facts = new OwnTax.Facts(
                asked.text("region", 10),
                choice(asked, "property", PropertyUse.values(), PropertyUse::code),
                choice(asked, "work", Work.values(), Work::code),
                choice(asked, "form", ContractForm.values(), ContractForm::code),
                own.all().size() + 1,
                asked.text("tax", 20),
                new Wording(asked.text("labelEn", 60), asked.text("labelFr", 60)),
                asked.oneOf(
                        "category",
                        Arrays.stream(TaxCategory.values()).map(Enum::name).collect(Collectors.toSet())),
                asked.decimal("percent", BigDecimal.ZERO, BigDecimal.valueOf(100)),
                asked.line("registration", 40),
                asked.day("from"),
                asked.dayOrNone("until"),
                asked.text("source", 500));
        asked.nothingElse().understood();
        return facts;
    }

    private static <T> @Nullable T choice(Asked asked, String member, T[] values, Function<T, String> code) {
        if (asked.value(member) == null) {
            return null;
        }
        Set<String> codes = Arrays.stream(values).map(code).collect(Collectors.toSet());
        String chosen = asked.oneOf(member, codes);
        return Arrays.stream(values)
                .filter(one -> code.apply(one).equals(chosen))
                .findFirst()
                .orElse(null);
    }

    /**
     * The owner has read a rate that we knew from memory: {@code row}, {@code source}, {@code readOn}, optionally {@code
     * registration}, the number printed with a tax whose number the profile does not hold.
     */
    @POST
    @Path("confirmations")
    @RolesAllowed("owner")
    public Response confirm(
            @PathParam("slug") String slug, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "tax confirmations " + body, () -> {
            Asked asked = Asked.of(body, json);
            String key = asked.text("row", 120);
            var facts = new TaxConfirmation.Facts(
                    asked.text("source", 500), asked.day("readOn"), asked.line("registration", 40));
            asked.nothingElse().understood();
            tables.confirm(key, facts);
            TaxRow confirmed = tables.shipped().stream()
                    .filter(row -> row.key().equals(key))
                    .findFirst()
                    .orElseThrow();
            return Once.Answer.made("/api/v1/" + slug + "/taxes", document(confirmed, false));
        });
    }

    /** A row of the business's own gets its last day, or another one while that has not come: {@code ended, lastDay}. */
    @POST
    @Path("last-days")
    @RolesAllowed("owner")
    public Response end(@PathParam("slug") String slug, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "tax last days " + body, () -> {
            Asked asked = Asked.of(body, json);
            String key = asked.text("ended", 120);
            LocalDate lastDay = asked.day("lastDay");
            asked.nothingElse().understood();
            return Once.Answer.done(document(own.end(key, lastDay).row(), true));
        });
    }

    private static TaxDocument document(TaxRow row, boolean own) {
        Tax tax = row.tax();
        return new TaxDocument(
                row.key(),
                own,
                tax.region(),
                row.property() == null ? null : row.property().code(),
                row.work() == null ? null : row.work().code(),
                row.form() == null ? null : row.form().code(),
                tax.code(),
                tax.label(),
                tax.category(),
                tax.percent().stripTrailingZeros().toPlainString(),
                row.from(),
                row.until(),
                tax.source(),
                tax.read());
    }
}
