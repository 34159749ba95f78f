package changeover.deploy.launcher;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipFile;

/** Which migrations the data have seen and which this Changeover brings: data that know one from the future are a newer Changeover's. */
final class Migrations {
    private static final Pattern FILE = Pattern.compile("db/[a-z]+/V([0-9]+)__[^/]+\\.sql");

    private Migrations() {}

    /** @throws CannotStart when the data were written by a newer version */
    static void check(DataFolder folder, Connection database) throws SQLException, IOException {
        long seen = newestSeen(database);
        long brought = newestBrought(folder.application());
        if (seen > brought) {
            throw new CannotStart(
                    "The data in %s were written by a newer Changeover (its migration %d is unknown here); start that one."
                            .formatted(folder.root(), seen));
        }
    }

    private static long newestSeen(Connection database) throws SQLException {
        try (Statement statement = database.createStatement()) {
            try (ResultSet table = statement.executeQuery("select to_regclass('flyway_schema_history') is not null")) {
                table.next();
                if (!table.getBoolean(1)) {
                    return 0;
                }
            }
            try (ResultSet newest = statement.executeQuery(
                    "select coalesce(max(version::numeric), 0)::bigint from flyway_schema_history where version ~ '^[0-9]+$'")) {
                newest.next();
                return newest.getLong(1);
            }
        }
    }

    private static long newestBrought(Path application) throws IOException {
        long newest = 0;
        try (Stream<Path> jars = Files.walk(application)) {
            for (Path jar : (Iterable<Path>) jars.filter(Migrations::ours)::iterator) {
                newest = Math.max(newest, newestIn(jar));
            }
        }
        return newest;
    }

    private static boolean ours(Path file) {
        String name = file.getFileName().toString();
        return name.endsWith(".jar") && (name.startsWith("changeover.") || name.startsWith("deploy-"));
    }

    private static long newestIn(Path jar) throws IOException {
        try (ZipFile zip = new ZipFile(jar.toFile())) {
            return zip.stream()
                    .map(entry -> version(entry.getName()))
                    .flatMap(Optional::stream)
                    .mapToLong(Long::longValue)
                    .max()
                    .orElse(0);
        }
    }

    private static Optional<Long> version(String name) {
        Matcher matcher = FILE.matcher(name);
        return matcher.matches() ? Optional.of(Long.valueOf(matcher.group(1))) : Optional.empty();
    }
}
