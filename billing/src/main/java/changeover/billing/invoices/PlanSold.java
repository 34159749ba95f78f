package changeover.billing.invoices;

import changeover.billing.pricing.Charge.Covered;
import changeover.billing.tax.ContractForm;
import changeover.billing.tax.TaxQuestion;
import changeover.billing.tax.Work;
import changeover.contracts.agreements.AgreementSold.Sold;
import changeover.contracts.agreements.FirstIssueDay;
import changeover.contracts.agreements.Instalments;
import changeover.contracts.agreements.Instalments.Instalment;
import changeover.contracts.calendar.Term;
import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A sold plan is asked for at once or in instalments: their sum is the price, the odd cents are on the first, and each
 * draft has the day from which it may be issued. The first may be issued on the day of the sale.
 *
 * @param number of the agreement
 * @param dueDays the business's terms of payment
 */
record PlanSold(
        Sold sold,
        int number,
        Wording plan,
        String country,
        String region,
        @Nullable String purchaseOrder,
        int dueDays) {

    List<Draft> drafts() {
        Term term = new Term(sold.termFrom(), sold.termUntil());
        return Instalments.of(sold.price(), sold.instalments(), term).all().stream()
                .map(this::draft)
                .toList();
    }

    private Draft draft(Instalment instalment) {
        LocalDate own = instalment.number() == 1 ? sold.saleDay() : instalment.day();
        FirstIssueDay from = FirstIssueDay.of(
                TaxQuestion.region(country, region), sold.channel(), sold.paidByCard(), sold.saleDay(), own);
        return new Draft(
                DocumentKind.PLAN,
                null,
                sold.payerId(),
                sold.homeId(),
                sold.agreementId(),
                null,
                null,
                instalment.number(),
                sold.instalments(),
                sold.language(),
                sold.price().currency(),
                from.notBefore(),
                from.awaitsFirstVisit(),
                purchaseOrder,
                dueDays,
                null,
                List.of(line(instalment)));
    }

    private DraftLine line(Instalment instalment) {
        Money amount = instalment.amount();
        return new DraftLine(
                sold.homeId(),
                sold.agreementId(),
                null,
                null,
                sold.termFrom(),
                "plan",
                null,
                null,
                Covered.BILLABLE,
                Work.MAINTENANCE,
                ContractForm.PLAN,
                words(instalment.number()),
                why(),
                BigDecimal.ONE,
                sold.instalments() == 1 ? "ANN" : "C62",
                amount,
                BigDecimal.ZERO,
                Money.zero(amount.currency()),
                amount);
    }

    private Wording words(int instalment) {
        Wording name = new Wording("Plan " + plan.en(), "Formule " + plan.fr());
        return sold.instalments() == 1
                ? name
                : new Wording(
                        name.en() + ", instalment " + instalment + " of " + sold.instalments(),
                        name.fr() + ", versement " + instalment + " de " + sold.instalments());
    }

    private Wording why() {
        LocalDate last = sold.termUntil().minusDays(1);
        Wording first = DaySaid.of(sold.termFrom());
        Wording until = DaySaid.of(last);
        return new Wording(
                "Agreement no. " + number + ", " + first.en() + " to " + until.en() + ".",
                "Entente nº\u00a0" + number + ", du " + first.fr() + " au " + until.fr() + ".");
    }
}
