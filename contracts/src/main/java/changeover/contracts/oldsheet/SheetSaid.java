package changeover.contracts.oldsheet;

import changeover.contracts.words.Refusal;

/**
 * A sentence about one cell: what is wrong with it, or how it was read.
 *
 * @param row as a spreadsheet counts
 * @param column its title, empty when the whole row is meant
 */
public record SheetSaid(int row, String column, Refusal what) {}
