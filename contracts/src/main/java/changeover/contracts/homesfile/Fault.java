package changeover.contracts.homesfile;

import changeover.contracts.words.Refusal;

/**
 * What is wrong with one cell.
 *
 * @param row as a spreadsheet counts: the titles are row 1
 * @param column its title, empty when the whole row or file is meant
 */
public record Fault(int row, String column, Refusal why) {

    static Fault of(Line line, Column column, Refusal why) {
        return new Fault(line.row(), column.title(), why);
    }
}
