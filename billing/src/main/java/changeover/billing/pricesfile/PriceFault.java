package changeover.billing.pricesfile;

import changeover.contracts.words.Refusal;

/**
 * Why a row is not taken.
 *
 * @param row as a spreadsheet counts: the titles are row 1
 * @param column its title, empty when the whole row is meant
 */
public record PriceFault(int row, String column, Refusal why) {}
