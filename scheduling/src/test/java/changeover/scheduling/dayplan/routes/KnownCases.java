package changeover.scheduling.dayplan.routes;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;

/**
 * The first 25 customers of M. M. Solomon's cases (Operations Research 35, 1987) as travel days: a tenth of a unit of
 * distance is a second, the distance cut to one decimal.
 */
final class KnownCases {

    private KnownCases() {}

    static TravelDay read(String name) {
        List<int[]> rows = rows(name);
        int[] vans = rows.removeFirst();
        int[][] drives = new int[rows.size()][rows.size()];
        for (int from = 0; from < rows.size(); from++) {
            for (int to = 0; to < rows.size(); to++) {
                drives[from][to] = tenths(rows.get(from), rows.get(to));
            }
        }
        List<Stop> stops = rows.stream()
                .skip(1)
                .map(row -> new Stop(
                        new UUID(0, row[0]), row[0], row[4] * 10, row[5] * 10, row[6] * 10, Set.of(), row[3], null))
                .toList();
        List<Turn> turns = Stream.iterate(1, van -> van <= vans[0], van -> van + 1)
                .map(van -> new Turn(
                        new UUID(1, van), 0, rows.getFirst()[4] * 10, rows.getFirst()[5] * 10, Set.of(), vans[1], null))
                .toList();
        return new TravelDay(turns, stops, Drives.of(drives));
    }

    private static int tenths(int[] from, int[] to) {
        int across = from[1] - to[1];
        int along = from[2] - to[2];
        int square = 100 * (across * across + along * along);
        int root = (int) Math.sqrt(square);
        while (root * root > square) {
            root--;
        }
        while ((root + 1) * (root + 1) <= square) {
            root++;
        }
        return root;
    }

    /** The vans and their room, the base, then the customers. */
    private static List<int[]> rows(String name) {
        try (InputStream in = KnownCases.class.getResourceAsStream(name + ".25.txt")) {
            return new ArrayList<>(new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .map(String::strip)
                    .filter(line -> line.matches("[0-9 ]+"))
                    .map(line -> Stream.of(line.split(" +"))
                            .mapToInt(Integer::parseInt)
                            .toArray())
                    .toList());
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        }
    }
}
