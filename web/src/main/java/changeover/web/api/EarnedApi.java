package changeover.web.api;

import changeover.billing.costs.StockValue;
import changeover.billing.ledger.Earned;
import changeover.billing.ledger.EarnedFile;
import changeover.billing.ledger.EarnedOn;
import changeover.billing.payments.DepositsHeld;
import changeover.billing.payments.Owed;
import changeover.billing.payments.OwedBy;
import changeover.billing.writeoffs.WriteOffs;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.OurAge;
import changeover.contracts.words.Wording;
import changeover.web.session.CsvAnswer;
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

    private static final LocalDate BEGINNING = LocalDate.of(OurAge.FIRST, 1, 1);

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

    /** Debts given up, less what was taken back: {@code tax} is the part of the taxes in it. */
    public record GivenUpDocument(Amount year, Amount taxOfYear, Amount ever, Amount taxOfEver) {}

    /** @param partsWithoutCost parts of which nobody wrote down what one costs; they are in no value */
    public record StockDocument(Amount value, int partsWithoutCost) {}

    /**
     * @param visits work that is no plan's, before tax; {@code fees} for returned payments and reminders apart from it
     * @param prepaid invoiced and not yet earned: owed as service
     * @param ahead earned and not yet invoiced
     * @param open tax included, by what is past its day
     * @param kept for customers who paid beyond what they owe; {@code deposits} what of it is held for work to come
     */
    public record EarnedDocument(
            LocalDate day,
            Span plans,
            Span visits,
            Span fees,
            Span together,
            Amount prepaid,
            Amount ahead,
            OpenDocument open,
            Amount kept,
            Amount deposits,
            GivenUpDocument givenUp,
            StockDocument stock,
            List<AgreementDocument> agreements) {}

    @Inject
    Earned earned;

    @Inject
    Owed owed;

    @Inject
    DepositsHeld held;

    @Inject
    WriteOffs writeOffs;

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
                Span.of(on.fees()),
                Span.of(on.together()),
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
                Amount.of(Money.sum(
                        held.on(day).stream().map(DepositsHeld.Held::left).toList(), on.currency())),
                givenUp(day),
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

    private GivenUpDocument givenUp(LocalDate day) {
        WriteOffs.Sum year = writeOffs.sum(day.withDayOfYear(1), day);
        WriteOffs.Sum ever = writeOffs.sum(BEGINNING, day);
        return new GivenUpDocument(
                Amount.of(year.amount()), Amount.of(year.tax()), Amount.of(ever.amount()), Amount.of(ever.tax()));
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
