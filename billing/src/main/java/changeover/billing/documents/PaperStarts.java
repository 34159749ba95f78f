package changeover.billing.documents;

import changeover.billing.invoices.Rows;
import changeover.contracts.digests.Sha256;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The starts of papers that are kept together, each once. */
final class PaperStarts {

    private record Start(byte[] sha256, byte[] bytes) {}

    private final List<Start> known = new ArrayList<>();

    /** The mark of the start with which a file begins; null where it is kept whole. */
    byte @Nullable [] markOf(byte[] file, int length) {
        if (length == 0) {
            return null;
        }
        for (Start start : known) {
            if (Arrays.equals(start.bytes(), 0, start.bytes().length, file, 0, length)) {
                return start.sha256();
            }
        }
        byte[] bytes = Arrays.copyOf(file, length);
        Start start = new Start(Sha256.of(bytes), bytes);
        known.add(start);
        return start.sha256();
    }

    /** Keeps the starts that the business does not have yet; whoever keeps some meets them in the same order. */
    void keep(Connection connection) throws SQLException {
        known.sort(Comparator.comparing(Start::sha256, Arrays::compare));
        Rows rows = new Rows("paper_start", "sha256 bytea, bytes bytea");
        known.forEach(start -> rows.add(start.sha256(), start.bytes()));
        rows.insertMissing(connection);
    }
}
