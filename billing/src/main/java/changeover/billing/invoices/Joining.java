package changeover.billing.invoices;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A payer of several dwellings who wants one invoice gets one: drafts of different homes that are issued together become
 * one document, unless money was already paid for one of them. Lines that a person wrote go along as they are, and so does
 * what a person took off.
 */
@ApplicationScoped
class Joining {

    /** @param into the draft that each joined one went into */
    record Joined(List<Waiting> drafts, Map<UUID, UUID> into) {}

    /** Drafts that could stand on one paper: the same payer, kind, language, currency, order and terms. */
    private record Paper(
            UUID customerId,
            DocumentKind kind,
            String language,
            String currency,
            @Nullable String purchaseOrder,
            int dueDays) {}

    Joined join(Connection connection, Collection<Waiting> drafts, LocalDate day) throws SQLException {
        Map<Paper, List<List<Waiting>>> papers = new LinkedHashMap<>();
        List<List<Waiting>> groups = new ArrayList<>();
        for (Waiting draft : drafts) {
            List<List<Waiting>> started =
                    joinable(draft, day) ? papers.computeIfAbsent(paper(draft), one -> new ArrayList<>()) : List.of();
            List<Waiting> open = started.stream()
                    .filter(group -> group.stream().noneMatch(one -> Objects.equals(one.homeId(), draft.homeId())))
                    .findFirst()
                    .orElse(null);
            if (open != null) {
                open.add(draft);
                continue;
            }
            List<Waiting> alone = new ArrayList<>(List.of(draft));
            groups.add(alone);
            if (joinable(draft, day)) {
                started.add(alone);
            }
        }
        return together(connection, groups);
    }

    private static boolean joinable(Waiting draft, LocalDate day) {
        return draft.joint()
                && (draft.kind() == DocumentKind.PLAN || draft.kind() == DocumentKind.VISIT)
                && draft.label() == null
                && draft.homeId() != null
                && !draft.awaitsFirstVisit()
                && !day.isBefore(draft.mayIssueFrom())
                && draft.lines().stream().noneMatch(LineRow::waitsForPrice);
    }

    private static Paper paper(Waiting draft) {
        return new Paper(
                draft.customerId(),
                draft.kind(),
                draft.language(),
                draft.currency().getCurrencyCode(),
                draft.purchaseOrder(),
                draft.dueDays());
    }

    private Joined together(Connection connection, List<List<Waiting>> groups) throws SQLException {
        Set<UUID> paid = paid(connection, groups);
        List<Waiting> drafts = new ArrayList<>();
        Map<UUID, UUID> into = new HashMap<>();
        for (List<Waiting> group : groups) {
            List<Waiting> unpaid =
                    group.stream().filter(draft -> !paid.contains(draft.id())).toList();
            group.stream().filter(draft -> paid.contains(draft.id())).forEach(drafts::add);
            if (unpaid.size() < 2) {
                drafts.addAll(unpaid);
                continue;
            }
            Waiting first = unpaid.getFirst();
            List<LineRow> lines = new ArrayList<>(first.lines());
            for (Waiting other : unpaid.subList(1, unpaid.size())) {
                int after = lines.stream().mapToInt(LineRow::position).max().orElse(0);
                move(connection, other, first, after);
                other.lines().forEach(line -> lines.add(line.at(first.id(), line.position() + after)));
                into.put(other.id(), first.id());
            }
            head(connection, first, lines);
            drafts.add(first.withLines(null, lines));
        }
        return new Joined(drafts, into);
    }

    private static Set<UUID> paid(Connection connection, List<List<Waiting>> groups) throws SQLException {
        Set<UUID> paid = new HashSet<>();
        List<UUID> asked = groups.stream()
                .filter(group -> group.size() > 1)
                .flatMap(List::stream)
                .map(Waiting::id)
                .toList();
        if (asked.isEmpty()) {
            return paid;
        }
        try (PreparedStatement select = connection.prepareStatement(
                "select distinct invoice_id from payment_allocation where invoice_id = any (?)")) {
            select.setArray(1, InvoiceRows.uuids(connection, asked));
            var row = select.executeQuery();
            while (row.next()) {
                paid.add(row.getObject(1, UUID.class));
            }
        }
        return paid;
    }

    private static void move(Connection connection, Waiting from, Waiting to, int after) throws SQLException {
        try (PreparedStatement lines = connection.prepareStatement(
                        "update invoice_line set invoice_id = ?, position = position + ? where invoice_id = ?");
                PreparedStatement off =
                        connection.prepareStatement("update line_taken_off set invoice_id = ? where invoice_id = ?");
                PreparedStatement gone = connection.prepareStatement("delete from invoice where id = ?")) {
            lines.setObject(1, to.id());
            lines.setInt(2, after);
            lines.setObject(3, from.id());
            lines.executeUpdate();
            off.setObject(1, to.id());
            off.setObject(2, from.id());
            off.executeUpdate();
            gone.setObject(1, from.id());
            gone.executeUpdate();
        }
    }

    private static void head(Connection connection, Waiting first, List<LineRow> lines) throws SQLException {
        try (PreparedStatement update = connection.prepareStatement(
                "update invoice set home_id = null, subtotal_minor = ?, version = version + 1 where id = ?")) {
            update.setLong(1, lines.stream().mapToLong(LineRow::netMinor).sum());
            update.setObject(2, first.id());
            update.executeUpdate();
        }
    }
}
