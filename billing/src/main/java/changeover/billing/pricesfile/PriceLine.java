package changeover.billing.pricesfile;

import java.util.Map;

/**
 * A row of the table, read cell by cell.
 *
 * @param row as a spreadsheet counts: the titles are row 1
 */
record PriceLine(int row, Map<Column, String> cells) {

    String cell(Column column) {
        return cells.getOrDefault(column, "").strip();
    }
}
