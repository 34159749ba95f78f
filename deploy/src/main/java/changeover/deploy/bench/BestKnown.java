package changeover.deploy.bench;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** The shortest distances that anybody has found for the published cases; the table names its source. */
final class BestKnown {
    private final Map<String, Long> tenths = new HashMap<>();

    static BestKnown table() throws IOException {
        try (var in = BestKnown.class.getResourceAsStream("solomon-best-known.csv")) {
            if (in == null) {
                throw new IOException("The table of best known distances is missing.");
            }
            BestKnown table = new BestKnown();
            new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .map(line -> line.split(","))
                    .forEach(row -> table.tenths.put(
                            row[0] + "," + row[1] + "," + row[3],
                            new BigDecimal(row[2]).movePointRight(1).longValueExact()));
            return table;
        }
    }

    /** Tenths; empty for a case that is not, figure by figure, the published one. */
    Optional<Long> of(SolomonFile solomon) {
        return Optional.ofNullable(tenths.get(solomon.name() + "," + solomon.customers() + "," + solomon.figures()));
    }
}
