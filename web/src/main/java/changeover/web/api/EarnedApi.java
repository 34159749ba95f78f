package changeover.web.api;

import changeover.billing.costs.StockValue;
import changeover.billing.ledger.Earned;
import changeover.billing.ledger.EarnedFile;
import changeover.billing.ledger.EarnedOn;
import changeover.billing.payments.Owed;
import changeover.billing.payments.OwedBy;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Wording;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The money of the business at the end of any day: earned, prepaid, open by age, kept for customers, in stock. */
@Path("/api/v1/{slug}")
@RolesAllowed({"owner", "office"})
public class EarnedApi {

    /** In the month of the day, in its year, and since the beginning. */
    public record Span(Amount month, Amount year, Amount ever) {

        static Span of(EarnedOn.Span span) {
            return new Span(Amount.of(span.month()), Amount.of(span.year()), Amount.of(span.ever()));
        }
    }

    /** @param until the first day that is no longer in the term */
    public record AgreementDocument(
            UUID agreement,
            int number,
            UUID home,
            UUID customer,
            Wording plan,
            LocalDate from,
            LocalDate until,
            Span earned,
            Amount invoiced,
            Amount prepaid,
            Amount ahead) {}

    public record OpenDocument(Amount notDue, Amount late30, Amount late60, Amount late90, Amount older, Amount all) {}

    /** @param partsWithoutCost parts of which nobody wrote down what one costs; they are in no value */
    public record StockDocument(Amount value, int partsWithoutCost) {}

    /**
     * @param visits documents that are no plan's, before tax
     * @param prepaid invoiced and not yet earned: owed as service
     * @param ahead earned and not yet invoiced
     * @param open tax included, by what is past its day
     * @param kept for customers who paid beyond what they owe
     */
    public record EarnedDocument(
            LocalDate day,
            Span plans,
            Span visits,
            Span together,
            Amount prepaid,
            Amount ahead,
            OpenDocument open,
            Amount kept,
            StockDocument stock,
            List<AgreementDocument> agreements) {}

    @Inject
    Earned earned;

    @Inject
    Owed owed;

    @Inject
    StockValue stock;

    @Inject
    Today today;

    /** Without a day: today. */
    @GET
    @Path("earned")
    @Transactional
    public EarnedDocument on(@Nullable @QueryParam("day") String said) {
        LocalDate day = day(said);
        EarnedOn on = earned.on(day);
        OwedBy by = owed.all(day);
        StockValue.On parts = stock.on(day);
        return new EarnedDocument(
                day,
                Span.of(on.earnedByPlans()),
                Span.of(on.visits()),
                Span.of(on.earnedByPlans().plus(on.visits())),
                Amount.of(on.sum(EarnedOn.Plan::prepaid)),
                Amount.of(on.sum(EarnedOn.Plan::ahead)),
                new OpenDocument(
                        Amount.of(by.notDue()),
                        Amount.of(by.late30()),
                        Amount.of(by.late60()),
                        Amount.of(by.late90()),
                        Amount.of(by.older()),
                        Amount.of(by.open())),
                Amount.of(by.credit()),
                new StockDocument(Amount.of(parts.value()), parts.withoutCost().size()),
                on.plans().stream().map(EarnedApi::agreement).toList());
    }

    /** The agreements as a table, one row each. */
    @GET
    @Path("earned.csv")
    @Produces({"text/csv", MediaType.APPLICATION_JSON})
    @Transactional
    public Response file(@Nullable @QueryParam("day") String said) {
        LocalDate day = day(said);
        return CsvAnswer.of(EarnedFile.of(earned.on(day)), "earned-" + day);
    }

    private LocalDate day(@Nullable String said) {
        return said == null ? today.day() : AskedInQuery.day("day", said);
    }

    private static AgreementDocument agreement(EarnedOn.Plan plan) {
        return new AgreementDocument(
                plan.agreementId(),
                plan.number(),
                plan.homeId(),
                plan.customerId(),
                plan.plan(),
                plan.term().from(),
                plan.term().until(),
                Span.of(plan.earned()),
                Amount.of(plan.invoiced()),
                Amount.of(plan.prepaid()),
                Amount.of(plan.ahead()));
    }
}
