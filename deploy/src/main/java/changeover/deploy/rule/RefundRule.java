package changeover.deploy.rule;

import changeover.billing.ledger.Cancelled;
import changeover.billing.ledger.Promised;
import changeover.billing.ledger.Recognition;
import changeover.billing.ledger.Refund;
import changeover.billing.ledger.RefundPolicy;
import changeover.billing.ledger.RefundWay;
import changeover.billing.tax.ContractForm;
import changeover.billing.tax.DocumentTaxes;
import changeover.billing.tax.PropertyUse;
import changeover.billing.tax.ShippedTaxes;
import changeover.billing.tax.TaxLine;
import changeover.billing.tax.TaxTable;
import changeover.billing.tax.Taxable;
import changeover.billing.tax.Work;
import changeover.contracts.calendar.Term;
import changeover.contracts.money.Money;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Currency;
import java.util.List;
import java.util.Map;

/** What a customer gets back who cancels. */
final class RefundRule implements Rule {
    @Override
    public String name() {
        return "refund";
    }

    @Override
    public String says() {
        return "Reckons what a cancelled plan gives back, in every way, with its credit note, and which way the law of the place picks.";
    }

    @Override
    public String example() {
        return """
                {"region": "CA-QC", "price": "249.00", "currency": "CAD", "term": {"from": "2026-04-01", "months": 12},
                 "cancelled": "2026-08-15",
                 "promises": [{"name": "spring visit", "alone": "140.00", "done": "2026-05-12"},
                              {"name": "autumn visit", "alone": "160.00"}, {"name": "filters", "alone": "40.00"}]}
                ("billed", before tax, is the price when it is left out, on "billedOn", the term's first day; "paid", with tax,
                 is all that was billed; "saidYesOn" is the term's first day; "why" is moved or commercial-use where the law
                 of the place asks; "smallSupplier": true charges no tax; without promises all is earned by day)""";
    }

    @Override
    public JsonNode answer(Question question) {
        Currency currency = question.currency();
        Term term = question.term("term");
        Recognition plan = question.has("promises")
                ? RecognitionRule.recognition(question, currency)
                : byDay(question.money("price", currency), term);
        Money billed = question.has("billed") ? question.money("billed", currency) : plan.price();
        List<TaxLine> taxes = taxes(question, term, billed);
        Money paid = question.has("paid")
                ? question.money("paid", currency)
                : Money.sum(taxes.stream().map(TaxLine::amount).toList(), currency)
                        .plus(billed);
        LocalDate day = question.day("cancelled");
        Map<String, LocalDate> done = RecognitionRule.done(question);
        LocalDate yes = question.maybeDay("saidYesOn").orElse(term.from());
        RefundPolicy policy =
                RefundPolicy.of(question.text("region"), question.text("why", ""), ChronoUnit.DAYS.between(yes, day));
        return said(Refund.of(new Cancelled(plan, day, done, billed, taxes, paid), policy));
    }

    private static Recognition byDay(Money price, Term term) {
        return Recognition.of(price, term, List.of(new Promised("the plan", price, Promised.Earned.BY_DAY)), List.of());
    }

    private static List<TaxLine> taxes(Question question, Term term, Money billed) {
        Taxable line = new Taxable(
                1,
                question.text("region"),
                PropertyUse.of(question.text("property", "residential")),
                Work.of(question.text("work", "maintenance")),
                ContractForm.of(question.text("form", "plan")),
                billed);
        return switch (DocumentTaxes.of(
                List.of(line),
                question.maybeDay("billedOn").orElse(term.from()),
                new TaxTable(ShippedTaxes.rows(), List.of()),
                question.yes("smallSupplier", false))) {
            case DocumentTaxes.Refused refused -> throw refused.refusal().thrown();
            case DocumentTaxes.Computed computed -> computed.lines();
        };
    }

    private static ObjectNode said(Refund refund) {
        ObjectNode answer = Answers.object();
        RefundPolicy policy = refund.policy();
        ObjectNode row = answer.putObject("policy");
        row.put("rule", policy.rule());
        ArrayNode allowed = row.putArray("ways");
        policy.ways().stream().map(RefundWay::code).forEach(allowed::add);
        row.put("source", policy.source()).put("sourceRead", policy.read());
        answer.put("way", refund.chosen().way().code());
        answer.setAll(said(refund.chosen()));
        ObjectNode ways = answer.putObject("ways");
        refund.ways().forEach(way -> ways.set(way.way().code(), said(way)));
        return answer.put("currency", refund.chosen().kept().currency().getCurrencyCode());
    }

    private static ObjectNode said(Refund.Settled way) {
        ObjectNode said = Answers.object()
                .put("kept", way.kept().decimal())
                .put("refund", way.credit().decimal());
        ObjectNode note = said.putObject("creditNote");
        note.put("net", way.credit().decimal());
        ArrayNode taxes = note.putArray("taxes");
        way.taxes()
                .forEach(tax -> taxes.add(Answers.object()
                        .put("code", tax.charged().tax().code())
                        .put("charged", tax.charged().amount().decimal())
                        .put("amount", tax.amount().decimal())));
        note.put("total", way.creditTotal().decimal());
        return said.put("paidOut", way.giveBack().decimal())
                .put("stillOwed", way.stillOwed().decimal())
                .put("stillToBill", way.stillToBill().decimal());
    }
}
