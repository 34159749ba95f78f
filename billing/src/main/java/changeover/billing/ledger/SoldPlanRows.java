package changeover.billing.ledger;

import changeover.contracts.calendar.Term;
import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** Reads every accepted agreement that something was asked for, with what was done for it: six statements however many. */
final class SoldPlanRows {

    private static final String AGREEMENTS = """
            select a.id, a.number, a.home_id, concat_ws(', ', h.street, h.unit_label, h.city), a.payer_id, c.name,
                   a.plan_name_en, a.plan_name_fr, a.term_from, a.term_until, a.included_minutes, a.covers_repairs, e.day
              from agreement a
              join agreement_acceptance y on y.tenant_id = a.tenant_id and y.agreement_id = a.id
              join home h on h.tenant_id = a.tenant_id and h.id = a.home_id
              join customer c on c.tenant_id = a.tenant_id and c.id = a.payer_id
              left join agreement_ending e on e.tenant_id = a.tenant_id and e.agreement_id = a.id
             order by a.number""";

    private static final String ASKED = """
            select l.agreement_id, i.kind = 'credit', s.day, d.day, sum(l.net_minor)::bigint
              from invoice_line l
              join invoice i on i.tenant_id = l.tenant_id and i.id = l.invoice_id
              left join invoice_issue s on s.tenant_id = i.tenant_id and s.invoice_id = i.id
              left join invoice_discard d on d.tenant_id = i.tenant_id and d.invoice_id = i.id
             where l.kind = 'plan' and l.agreement_id is not null
             group by l.agreement_id, i.id, i.kind, s.day, d.day order by i.id""";

    /** A task that was put off is done when the visit that answers its own does it. */
    private static final String TASKS = """
            select v.agreement_id, t.id, t.minutes,
                   coalesce(case when o.outcome is distinct from 'deferred' then coalesce(c.day, n.day) end, r.day)
              from visit v
              join visit_task t on t.tenant_id = v.tenant_id and t.visit_id = v.id and t.who = 'technician'
              left join closure c on c.tenant_id = v.tenant_id and c.visit_id = v.id
              left join visit_ending n on n.tenant_id = v.tenant_id and n.visit_id = v.id and n.how = 'closed'
              left join task_outcome o on o.tenant_id = t.tenant_id and o.visit_task_id = t.id
              left join (
                select b.tenant_id, b.answers_id, k.task_code, k.equipment_id, min(e.day) as day
                  from visit b
                  join visit_task k on k.tenant_id = b.tenant_id and k.visit_id = b.id
                  join closure e on e.tenant_id = b.tenant_id and e.visit_id = b.id
                  left join task_outcome p on p.tenant_id = k.tenant_id and p.visit_task_id = k.id
                 where b.answers_id is not null and p.outcome is distinct from 'deferred'
                 group by b.tenant_id, b.answers_id, k.task_code, k.equipment_id) r
                on r.tenant_id = v.tenant_id and r.answers_id = v.id and r.task_code = t.task_code
               and r.equipment_id is not distinct from t.equipment_id
             where v.agreement_id is not null and v.kind = 'plan'
             order by v.agreement_id, v.window_from, v.id, t.position, t.id""";

    private static final String PARTS =
            "select agreement_id, part_kind, quantity from agreement_part order by agreement_id, part_kind";

    private static final String USED = """
            select l.agreement_id, l.part_kind, l.day, sum(l.quantity)
              from invoice_line l
             where l.kind = 'part' and l.coverage = 'included' and l.agreement_id is not null and l.part_kind is not null
               and l.visit_id is not null and l.visit_version = greatest(
                 (select max(n.visit_version) from invoice_line n
                   where n.tenant_id = l.tenant_id and n.visit_id = l.visit_id),
                 (select max(i.visit_version) from invoice i
                   where i.tenant_id = l.tenant_id and i.visit_id = l.visit_id))
             group by l.agreement_id, l.part_kind, l.day order by l.day""";

    private final Map<UUID, List<SoldPlan.Asked>> asked = new HashMap<>();
    private final Map<UUID, List<StandAlone.Task>> tasks = new HashMap<>();
    private final Map<UUID, List<StandAlone.Part>> parts = new HashMap<>();
    private final Map<UUID, Map<String, LocalDate>> done = new HashMap<>();
    private final Map<UUID, Map<String, BigDecimal>> used = new HashMap<>();

    private SoldPlanRows() {}

    static List<SoldPlan> of(Connection connection, Currency currency) throws SQLException {
        SoldPlanRows rows = new SoldPlanRows();
        rows.asked(connection);
        rows.tasks(connection);
        rows.parts(connection);
        rows.used(connection);
        return rows.plans(connection, SplitPrices.of(connection, currency), currency);
    }

    private void asked(Connection connection) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement(ASKED);
                ResultSet row = select.executeQuery()) {
            while (row.next()) {
                asked.computeIfAbsent(row.getObject(1, UUID.class), one -> new ArrayList<>())
                        .add(new SoldPlan.Asked(
                                row.getBoolean(2),
                                row.getObject(3, LocalDate.class),
                                row.getObject(4, LocalDate.class),
                                row.getLong(5)));
            }
        }
    }

    private void tasks(Connection connection) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement(TASKS);
                ResultSet row = select.executeQuery()) {
            while (row.next()) {
                UUID agreement = row.getObject(1, UUID.class);
                String id = row.getString(2);
                tasks.computeIfAbsent(agreement, one -> new ArrayList<>()).add(new StandAlone.Task(id, row.getInt(3)));
                LocalDate day = row.getObject(4, LocalDate.class);
                if (day != null) {
                    done.computeIfAbsent(agreement, one -> new HashMap<>()).put(id, day);
                }
            }
        }
    }

    private void parts(Connection connection) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement(PARTS);
                ResultSet row = select.executeQuery()) {
            while (row.next()) {
                parts.computeIfAbsent(row.getObject(1, UUID.class), one -> new ArrayList<>())
                        .add(new StandAlone.Part(row.getString(2), row.getBigDecimal(3)));
            }
        }
    }

    /** A piece is handed over on the day on which so many were used; the last may be a part of one. */
    private void used(Connection connection) throws SQLException {
        Map<UUID, Map<String, BigDecimal>> promised = new HashMap<>();
        parts.forEach((agreement, list) -> list.forEach(part ->
                promised.computeIfAbsent(agreement, one -> new HashMap<>()).put(part.kind(), part.quantity())));
        try (PreparedStatement select = connection.prepareStatement(USED);
                ResultSet row = select.executeQuery()) {
            while (row.next()) {
                UUID agreement = row.getObject(1, UUID.class);
                String kind = row.getString(2);
                BigDecimal most = promised.getOrDefault(agreement, Map.of()).getOrDefault(kind, BigDecimal.ZERO);
                BigDecimal so = used.computeIfAbsent(agreement, one -> new HashMap<>())
                        .merge(kind, row.getBigDecimal(4), BigDecimal::add);
                for (int piece = 1; piece <= StandAlone.pieces(most); piece++) {
                    if (so.compareTo(BigDecimal.valueOf(piece).min(most)) >= 0) {
                        done.computeIfAbsent(agreement, one -> new HashMap<>())
                                .putIfAbsent(StandAlone.piece(kind, piece), row.getObject(3, LocalDate.class));
                    }
                }
            }
        }
    }

    private List<SoldPlan> plans(Connection connection, SplitPrices prices, Currency currency) throws SQLException {
        List<SoldPlan> plans = new ArrayList<>();
        try (PreparedStatement select = connection.prepareStatement(AGREEMENTS);
                ResultSet row = select.executeQuery()) {
            while (row.next()) {
                UUID id = row.getObject(1, UUID.class);
                List<SoldPlan.Asked> asks = asked.get(id);
                if (asks == null) {
                    continue;
                }
                Term term = new Term(row.getObject(9, LocalDate.class), row.getObject(10, LocalDate.class));
                StandAlone.Facts facts = new StandAlone.Facts(
                        tasks.getOrDefault(id, List.of()),
                        parts.getOrDefault(id, List.of()),
                        row.getInt(11),
                        row.getBoolean(12));
                Map<String, Money> alone = prices.on(term.from());
                StandAlone split = StandAlone.of(facts, alone.get(SplitPrices.HOUR), alone, currency);
                plans.add(new SoldPlan(
                        new SoldPlan.Head(
                                id,
                                row.getInt(2),
                                row.getObject(3, UUID.class),
                                row.getString(4),
                                row.getObject(5, UUID.class),
                                row.getString(6),
                                new Wording(row.getString(7), row.getString(8)),
                                term),
                        split.promised(),
                        split.basis(),
                        SoldPlan.known(done.getOrDefault(id, Map.of()), split.promised()),
                        List.copyOf(asks),
                        row.getObject(13, LocalDate.class)));
            }
        }
        return plans;
    }
}
