package changeover.billing.documents;

import changeover.billing.invoices.Rows;
import changeover.contracts.digests.Sha256;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/** The papers of the current business: wanted in the business's transaction, made after it, kept once. */
@ApplicationScoped
public class Documents {

    private static final String COLUMNS =
            "of_kind, of_id, version, media_type, file_name, language, sha256, paper_bytes(document), made_at";

    @Inject
    AgroalDataSource database;

    /** Wants papers; one that is wanted or kept already is not wanted twice. */
    public void order(Collection<Wanted> wanted) {
        if (wanted.isEmpty()) {
            return;
        }
        String sql = """
                insert into document_order (of_kind, of_id, version)
                select w.kind, w.of_id, w.version from unnest(?::text[], ?::uuid[], ?::int[]) as w(kind, of_id, version)
                where not exists (select 1 from document d where d.tenant_id = current_tenant()
                  and d.of_kind = w.kind and d.of_id = w.of_id and d.version = w.version)
                on conflict on constraint document_ordered_once do nothing
                """;
        try (var connection = database.getConnection();
                PreparedStatement insert = connection.prepareStatement(sql)) {
            Object[] kinds = wanted.stream().map(one -> one.kind().code()).toArray();
            Object[] ids = wanted.stream().map(one -> one.ofId().toString()).toArray();
            Object[] versions =
                    wanted.stream().map(one -> String.valueOf(one.version())).toArray();
            insert.setArray(1, connection.createArrayOf("text", kinds));
            insert.setArray(2, connection.createArrayOf("uuid", ids));
            insert.setArray(3, connection.createArrayOf("int", versions));
            insert.executeUpdate();
        } catch (SQLException cause) {
            throw new IllegalStateException(cause);
        }
    }

    /** The newest version; empty while it isn't made. */
    public Optional<Document> newest(PaperKind kind, UUID ofId) {
        return first(
                "select " + COLUMNS + " from document where tenant_id = current_tenant() and of_kind = ?"
                        + " and of_id = ?::uuid and media_type = 'application/pdf' order by version desc limit 1",
                kind.code(),
                ofId.toString());
    }

    /** One version as a PDF; empty while it isn't made. */
    public Optional<Document> find(PaperKind kind, UUID ofId, int version) {
        return first(
                "select " + COLUMNS + " from document where tenant_id = current_tenant() and of_kind = ?"
                        + " and of_id = ?::uuid and media_type = 'application/pdf' and version = ?::int",
                kind.code(),
                ofId.toString(),
                String.valueOf(version));
    }

    /** How many papers are wanted and not made yet. */
    public int waiting() {
        try (var connection = database.getConnection();
                var select = connection.prepareStatement(
                        "select count(*) from document_order where tenant_id = current_tenant()");
                ResultSet row = select.executeQuery()) {
            row.next();
            return row.getInt(1);
        } catch (SQLException cause) {
            throw new IllegalStateException(cause);
        }
    }

    /** Keeps drawn papers; one that is kept already stays as it is. */
    void keep(Map<Wanted, DrawnPaper> papers) throws SQLException {
        Rows rows = new Rows(
                "document",
                "of_kind text, of_id uuid, version int, media_type text, file_name text, language text, sha256 bytea,"
                        + " start_sha256 bytea, own_bytes bytea");
        PaperStarts starts = new PaperStarts();
        papers.forEach((wanted, paper) -> {
            int start = PaperStart.length(paper.bytes());
            rows.add(
                    wanted.kind().code(),
                    wanted.ofId(),
                    wanted.version(),
                    paper.mediaType(),
                    paper.fileName(),
                    paper.language(),
                    Sha256.of(paper.bytes()),
                    starts.markOf(paper.bytes(), start),
                    Arrays.copyOfRange(paper.bytes(), start, paper.bytes().length));
        });
        try (var connection = database.getConnection()) {
            starts.keep(connection);
            rows.insertMissing(connection);
        }
    }

    /** Keeps a PDF that was brought and is never drawn. */
    public void keepFile(Wanted wanted, String name, String language, byte[] pdf) {
        try {
            keep(Map.of(wanted, DrawnPaper.pdf(name, language, pdf)));
        } catch (SQLException cause) {
            throw new IllegalStateException("the file could not be kept", cause);
        }
    }

    private Optional<Document> first(String sql, String... values) {
        List<Document> found = new ArrayList<>(1);
        try (var connection = database.getConnection();
                PreparedStatement select = connection.prepareStatement(sql)) {
            for (int at = 0; at < values.length; at++) {
                select.setString(at + 1, values[at]);
            }
            try (ResultSet row = select.executeQuery()) {
                while (row.next()) {
                    found.add(read(row));
                }
            }
        } catch (SQLException cause) {
            throw new IllegalStateException(cause);
        }
        return found.stream().findFirst();
    }

    private static Document read(ResultSet row) throws SQLException {
        return new Document(
                PaperKind.of(row.getString(1)),
                row.getObject(2, UUID.class),
                row.getInt(3),
                row.getString(4),
                row.getString(5),
                row.getString(6),
                HexFormat.of().formatHex(row.getBytes(7)),
                row.getBytes(8),
                row.getTimestamp(9).toInstant());
    }
}
