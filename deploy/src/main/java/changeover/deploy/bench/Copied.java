package changeover.deploy.bench;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import org.postgresql.PGConnection;
import org.postgresql.copy.CopyManager;

/** The bare tool: PostgreSQL's own COPY of the same rows into the same tables, keys, references and triggers and all. */
final class Copied {
    private final Connection owner;
    private final List<String> tables;
    private final Path folder;

    /** Between two runs the tables are emptied, which the product itself refuses: only that refusal is put aside here. */
    private static final String LET_EMPTY = """
            do $$ declare t record; begin
              for t in select tgname, tgrelid::regclass as name from pg_trigger where not tgisinternal and tgtype & 32 <> 0 loop
                execute format('alter table %s disable trigger %I', t.name, t.tgname);
              end loop;
            end $$""";

    /**
     * Prepares the copying.
     *
     * @param tables in the order in which they refer to each other
     */
    Copied(Connection owner, List<String> tables) throws IOException, SQLException {
        this.owner = owner;
        this.tables = tables;
        this.folder = Files.createTempDirectory("changeover-copied");
        try (Statement statement = owner.createStatement()) {
            statement.execute(LET_EMPTY);
        }
    }

    private CopyManager manager() throws SQLException {
        return owner.unwrap(PGConnection.class).getCopyAPI();
    }

    /** Keeps the rows that stand in the tables now. */
    void keep() throws SQLException, IOException {
        for (String table : tables) {
            try (OutputStream out = Files.newOutputStream(folder.resolve(table))) {
                manager().copyOut("copy " + table + " to stdout (format binary)", out);
            }
        }
    }

    /** Empties the tables. */
    void clear() throws SQLException {
        try (Statement statement = owner.createStatement()) {
            statement.execute("truncate " + String.join(", ", tables) + " cascade");
        }
    }

    /**
     * Copies the kept rows back in, in one transaction. Each table is analyzed, as whoever loads by COPY does: the references
     * to it are else checked by plans made for an empty table.
     */
    void copy() throws SQLException, IOException {
        owner.setAutoCommit(false);
        for (String table : tables) {
            try (InputStream in = Files.newInputStream(folder.resolve(table))) {
                manager().copyIn("copy " + table + " from stdin (format binary)", in, 1 << 16);
            }
            analyze(table);
        }
        owner.commit();
        owner.setAutoCommit(true);
    }

    private void analyze(String table) throws SQLException {
        try (Statement statement = owner.createStatement()) {
            statement.execute("analyze " + table);
        }
    }

    /** What a question answers, as text. */
    String ask(String sql) throws SQLException {
        try (Statement statement = owner.createStatement();
                ResultSet row = statement.executeQuery(sql)) {
            row.next();
            return row.getString(1);
        }
    }

    void forget() throws IOException {
        for (String table : tables) {
            Files.deleteIfExists(folder.resolve(table));
        }
        Files.deleteIfExists(folder);
    }
}
