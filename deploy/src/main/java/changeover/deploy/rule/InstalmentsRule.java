package changeover.deploy.rule;

import changeover.contracts.agreements.Instalments;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** A plan's price in parts. */
final class InstalmentsRule implements Rule {
    @Override
    public String name() {
        return "instalments";
    }

    @Override
    public String says() {
        return "Splits a plan's price into instalments over the term, their sum the price to the cent.";
    }

    @Override
    public String example() {
        return """
                {"price": "249.00", "currency": "CAD", "count": 4, "term": {"from": "2027-01-31", "months": 12}}""";
    }

    @Override
    public JsonNode answer(Question question) {
        Instalments instalments = Instalments.of(
                question.money("price", question.currency()), question.number("count"), question.term("term"));
        ObjectNode answer = Answers.object();
        ArrayNode all = answer.putArray("instalments");
        instalments
                .all()
                .forEach(one -> all.add(Answers.object()
                        .put("number", one.number())
                        .put("day", one.day().toString())
                        .put("amount", one.amount().decimal())));
        return answer.put("currency", question.currency().getCurrencyCode());
    }
}
