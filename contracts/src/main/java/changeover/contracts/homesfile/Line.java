package changeover.contracts.homesfile;

import java.util.EnumMap;
import java.util.Map;

/** One row as it stands in the file: its number there (the titles are row 1) and its cells, an empty one as "". */
record Line(int row, Map<Column, String> cells) {

    Line {
        cells = new EnumMap<>(cells);
    }

    String cell(Column column) {
        return cells.getOrDefault(column, "");
    }
}
