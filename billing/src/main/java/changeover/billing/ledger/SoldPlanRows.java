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
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Reads accepted agreements that something was asked for, all or one, with what was done for them: by ten statements, however many. */
final class SoldPlanRows {

    private static final String AGREEMENTS = """
            select a.id, a.number, a.home_id, concat_ws(', ', h.street, h.unit_label, h.city), a.payer_id, c.name,
                   a.plan_name_en, a.plan_name_fr, a.term_from, a.term_until, a.included_minutes, a.covers_repairs, e.day
              from agreement a
              join agreement_acceptance y on y.tenant_id = a.tenant_id and y.agreement_id = a.id
              join home h on h.tenant_id = a.tenant_id and h.id = a.home_id
              join customer c on c.tenant_id = a.tenant_id and c.id = a.payer_id
              left join agreement_ending e on e.tenant_id = a.tenant_id and e.agreement_id = a.id
             where ?::uuid is null or a.id = ?
             order by a.number""";

    private static final String ASKED = """
            select l.agreement_id, i.kind = 'credit', s.day, d.day, sum(l.net_minor)::bigint
              from invoice_line l
              join invoice i on i.tenant_id = l.tenant_id and i.id = l.invoice_id
              left join invoice_issue s on s.tenant_id = i.tenant_id and s.invoice_id = i.id
              left join invoice_discard d on d.tenant_id = i.tenant_id and d.invoice_id = i.id
             where l.kind = 'plan' and l.agreement_id is not null and (?::uuid is null or l.agreement_id = ?)
             group by l.agreement_id, i.id, i.kind, s.day, d.day
            union all
            select i.agreement_id, false, null, x.day, x.amount_minor
              from instalment_lessening x join invoice i on i.tenant_id = x.tenant_id and i.id = x.invoice_id
             where i.agreement_id is not null and (?::uuid is null or i.agreement_id = ?)""";

    /** A task that was put off is done when the visit that answers its own does it, or a later one that took it up. */
    private static final String TASKS = """
            select v.agreement_id, t.id, t.minutes,
                   coalesce(case when o.outcome is distinct from 'deferred' then coalesce(c.day, n.day) end, r.day, j.day)
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
              left join (
                select k.tenant_id, k.put_off_id, min(e.day) as day
                  from visit_task k
                  join closure e on e.tenant_id = k.tenant_id and e.visit_id = k.visit_id
                  left join task_outcome p on p.tenant_id = k.tenant_id and p.visit_task_id = k.id
                 where k.put_off_id is not null and p.outcome is distinct from 'deferred'
                 group by k.tenant_id, k.put_off_id) j
                on j.tenant_id = t.tenant_id and j.put_off_id = t.id
             where v.agreement_id is not null and v.kind = 'plan' and t.put_off_id is null
               and (?::uuid is null or v.agreement_id = ?)
             order by v.agreement_id, v.window_from, v.id, t.position, t.id""";

    private static final String PARTS = """
            select agreement_id, part_kind, quantity from agreement_part
             where ?::uuid is null or agreement_id = ? order by agreement_id, part_kind""";

    private static final String USED = """
            select l.agreement_id, l.part_kind, l.day, sum(l.quantity)
              from invoice_line l
             where l.kind = 'part' and l.coverage = 'included' and l.agreement_id is not null and l.part_kind is not null
               and l.visit_id is not null and l.visit_version = greatest(
                 (select max(n.visit_version) from invoice_line n
                   where n.tenant_id = l.tenant_id and n.visit_id = l.visit_id),
                 (select max(i.visit_version) from invoice i
                   where i.tenant_id = l.tenant_id and i.visit_id = l.visit_id))
               and (?::uuid is null or l.agreement_id = ?)
             group by l.agreement_id, l.part_kind, l.day
            union all
            select g.agreement_id, g.part_kind, g.day, sum(g.quantity) from part_given g
             where ?::uuid is null or g.agreement_id = ?
             group by g.agreement_id, g.part_kind, g.day order by 3""";

    private final Map<UUID, List<SoldPlan.Asked>> asked = new HashMap<>();
    private final Map<UUID, List<StandAlone.Task>> tasks = new HashMap<>();
    private final Map<UUID, List<StandAlone.Part>> parts = new HashMap<>();
    private final Map<UUID, Map<String, LocalDate>> done = new HashMap<>();
    private final Map<UUID, Map<String, BigDecimal>> used = new HashMap<>();

    private final Connection connection;
    private final @Nullable UUID only;

    private SoldPlanRows(Connection connection, @Nullable UUID only) {
        this.connection = connection;
        this.only = only;
    }

    static List<SoldPlan> of(Connection connection, Currency currency) throws SQLException {
        return read(connection, null, currency);
    }

    /** Empty when nothing was asked for it, or nobody said yes to it. */
    static Optional<SoldPlan> one(Connection connection, UUID agreement, Currency currency) throws SQLException {
        return read(connection, agreement, currency).stream().findFirst();
    }

    private static List<SoldPlan> read(Connection connection, @Nullable UUID only, Currency currency)
            throws SQLException {
        SoldPlanRows rows = new SoldPlanRows(connection, only);
        rows.asked();
        rows.tasks();
        rows.parts();
        rows.used();
        return rows.plans(SplitPrices.of(connection, currency), currency);
    }

    private PreparedStatement ask(String sql, int times) throws SQLException {
        PreparedStatement select = connection.prepareStatement(sql);
        for (int at = 1; at <= 2 * times; at++) {
            select.setObject(at, only);
        }
        return select;
    }

    private void asked() throws SQLException {
        try (PreparedStatement select = ask(ASKED, 2);
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

    private void tasks() throws SQLException {
        try (PreparedStatement select = ask(TASKS, 1);
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

    private void parts() throws SQLException {
        try (PreparedStatement select = ask(PARTS, 1);
                ResultSet row = select.executeQuery()) {
            while (row.next()) {
                parts.computeIfAbsent(row.getObject(1, UUID.class), one -> new ArrayList<>())
                        .add(new StandAlone.Part(row.getString(2), row.getBigDecimal(3)));
            }
        }
    }

    /** A piece is handed over on the day on which so many were used; the last may be a part of one. */
    private void used() throws SQLException {
        Map<UUID, Map<String, BigDecimal>> promised = new HashMap<>();
        parts.forEach((agreement, list) -> list.forEach(part ->
                promised.computeIfAbsent(agreement, one -> new HashMap<>()).put(part.kind(), part.quantity())));
        try (PreparedStatement select = ask(USED, 2);
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

    private List<SoldPlan> plans(SplitPrices prices, Currency currency) throws SQLException {
        List<SoldPlan> plans = new ArrayList<>();
        Map<UUID, List<Settlement.Settled>> settled = SettlementRows.settled(connection, only, currency);
        try (PreparedStatement select = ask(AGREEMENTS, 1);
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
                        row.getObject(13, LocalDate.class),
                        List.copyOf(settled.getOrDefault(id, List.of()))));
            }
        }
        return plans;
    }
}
