package changeover.web.api;

import changeover.contracts.money.Money;

/** Money as the API says it: a decimal text and its currency. */
public record Amount(String amount, String currency) {

    public static Amount of(Money money) {
        return new Amount(money.decimal(), money.currency().getCurrencyCode());
    }
}
