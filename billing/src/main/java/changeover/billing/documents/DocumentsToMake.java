package changeover.billing.documents;

import changeover.contracts.tenants.AtTheCounter;
import changeover.contracts.tenants.CurrentTenant;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Any;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jboss.logging.Logger;
import org.jspecify.annotations.Nullable;

/** Makes the papers that are wanted, after the commit; asked twice, or by two machines at once, each is made once. */
@ApplicationScoped
public class DocumentsToMake {

    private static final Logger LOG = Logger.getLogger(DocumentsToMake.class);
    private static final int AT_ONCE = 100;

    /** While somebody waits: whoever else writes has that many papers before them on the way to the disk, and no more. */
    private static final int A_FEW = 10;

    @Inject
    CurrentTenant current;

    @Inject
    AgroalDataSource database;

    @Inject
    Documents documents;

    @Inject
    AtTheCounter counter;

    @Inject
    @Any
    Instance<PaperSource> sources;

    private record Order(UUID id, Wanted wanted) {}

    /**
     * Makes up to so many papers of a business, a transaction for each hundred or, while somebody waits, for each few; says how many
     * were made.
     */
    public int makePending(UUID tenant, int limit) {
        int made = 0;
        boolean more = true;
        while (more && made < limit) {
            int most = Math.min(counter.isSomebody() ? A_FEW : AT_ONCE, limit - made);
            int batch = current.run(tenant, CurrentTenant.NOBODY, () -> makeSome(most));
            made += batch;
            more = batch == most;
        }
        return made;
    }

    /** The newest paper of a thing; when it is wanted and not made yet, it is made now. */
    public Optional<Document> newest(UUID tenant, PaperKind kind, UUID ofId) {
        Optional<Document> kept = current.run(tenant, CurrentTenant.NOBODY, () -> documents.newest(kind, ofId));
        if (kept.isPresent()) {
            return kept;
        }
        makePending(tenant, Integer.MAX_VALUE);
        current.run(tenant, CurrentTenant.NOBODY, () -> waitForWhoeverDraws(kind, ofId));
        return current.run(tenant, CurrentTenant.NOBODY, () -> documents.newest(kind, ofId));
    }

    /** The timer may hold the order at this very moment: its lock goes when the paper is there. */
    private boolean waitForWhoeverDraws(PaperKind kind, UUID ofId) throws SQLException {
        try (var connection = database.getConnection();
                PreparedStatement wait = connection.prepareStatement("""
                        select 1 from document_order
                         where tenant_id = current_tenant() and of_kind = ? and of_id = ?::uuid for update""")) {
            wait.setString(1, kind.code());
            wait.setString(2, ofId.toString());
            return wait.execute();
        }
    }

    private int makeSome(int most) throws SQLException {
        try (var connection = database.getConnection()) {
            List<Order> orders = orders(connection, most);
            if (orders.isEmpty()) {
                return 0;
            }
            Map<Wanted, PaperSource.Drawn> drawn = draw(orders);
            Map<Wanted, DrawnPaper> papers = new LinkedHashMap<>();
            List<UUID> done = new ArrayList<>();
            for (Order order : orders) {
                if (drawn.get(order.wanted()) instanceof PaperSource.Drawn.Paper paper) {
                    papers.put(order.wanted(), paper.paper());
                    done.add(order.id());
                } else {
                    postpone(connection, order, drawn.get(order.wanted()));
                }
            }
            documents.keep(papers);
            remove(connection, done);
            return done.size();
        }
    }

    private Map<Wanted, PaperSource.Drawn> draw(List<Order> orders) {
        Map<PaperKind, List<Wanted>> byKind = new EnumMap<>(PaperKind.class);
        orders.forEach(order -> byKind.computeIfAbsent(order.wanted().kind(), kind -> new ArrayList<>())
                .add(order.wanted()));
        Map<Wanted, PaperSource.Drawn> drawn = new LinkedHashMap<>();
        for (PaperSource source : sources) {
            List<Wanted> mine = new ArrayList<>();
            source.kinds().forEach(kind -> mine.addAll(byKind.getOrDefault(kind, List.of())));
            if (!mine.isEmpty()) {
                drawn.putAll(source.draw(mine));
            }
        }
        return drawn;
    }

    private static List<Order> orders(Connection connection, int most) throws SQLException {
        String sql = """
                select id, of_kind, of_id, version from document_order
                where tenant_id = current_tenant() and next_try_at <= now()
                order by id limit ? for update skip locked
                """;
        List<Order> orders = new ArrayList<>();
        try (PreparedStatement select = connection.prepareStatement(sql)) {
            select.setInt(1, most);
            try (ResultSet row = select.executeQuery()) {
                while (row.next()) {
                    orders.add(new Order(
                            row.getObject(1, UUID.class),
                            new Wanted(PaperKind.of(row.getString(2)), row.getObject(3, UUID.class), row.getInt(4))));
                }
            }
        }
        return orders;
    }

    /** A paper that could not be drawn is tried again after one, two, four … minutes, at most a day. */
    private static void postpone(Connection connection, Order order, PaperSource.@Nullable Drawn drawn)
            throws SQLException {
        String reason = drawn instanceof PaperSource.Drawn.Failed failed ? failed.reason() : "nothing to draw it from";
        LOG.warnf("%s not made: %s", order.wanted(), reason);
        String sql = """
                update document_order set attempts = attempts + 1, last_error = ?,
                  next_try_at = now() + least(interval '1 day', interval '1 minute' * power(2, least(attempts, 12)))
                where tenant_id = current_tenant() and id = ?::uuid
                """;
        try (PreparedStatement update = connection.prepareStatement(sql)) {
            update.setString(1, reason);
            update.setString(2, order.id().toString());
            update.executeUpdate();
        }
    }

    private static void remove(Connection connection, List<UUID> done) throws SQLException {
        try (PreparedStatement delete = connection.prepareStatement(
                "delete from document_order where tenant_id = current_tenant() and id = any(?::uuid[])")) {
            delete.setArray(
                    1,
                    connection.createArrayOf(
                            "uuid", done.stream().map(UUID::toString).toArray()));
            delete.executeUpdate();
        }
    }
}
