package changeover.scheduling.visits;

import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.Due;
import changeover.contracts.catalogue.Who;
import changeover.contracts.words.Wording;
import changeover.scheduling.visits.StandingVisit.StandingTask;
import java.sql.Array;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;

/** The visits of agreements' years as they stand, each with its work. */
final class YearsUnderWay {

    private static final UUID THE_HOME = new UUID(0, 0);

    private static final String VISITS = """
            select v.agreement_id, v.id, v.window_from, v.window_until, coalesce(e.day, a.day, w.day) as day,
              e.id is not null or w.id is not null
                or exists (select from operation o where o.tenant_id = v.tenant_id and o.visit_id = v.id) as begun
              from visit v
              left join visit_ending e on e.tenant_id = v.tenant_id and e.visit_id = v.id
              left join appointment a on a.tenant_id = v.tenant_id and a.visit_id = v.id
            """ + GivenOut.JOINED + """
             where v.agreement_id = any (?::uuid[]) and v.kind = 'plan'
             order by v.agreement_id, v.window_from, v.window_until, v.id for update of v
            """;

    private static final String TASKS = """
            select t.visit_id, t.id, t.equipment_id, t.task_code, t.minutes, t.due_from, t.due_until, t.act,
              t.reason_en, t.reason_fr, t.put_off_id is not null as put_off
              from visit v join visit_task t on t.tenant_id = v.tenant_id and t.visit_id = v.id
             where v.agreement_id = any (?::uuid[]) and v.kind = 'plan' order by t.visit_id, t.position, t.id
            """;

    private final Connection connection;

    YearsUnderWay(Connection connection) {
        this.connection = connection;
    }

    /** By the agreement, in the order of their windows. */
    Map<UUID, List<StandingVisit>> of(Collection<UUID> agreementIds) throws SQLException {
        Array agreements = connection.createArrayOf("uuid", agreementIds.toArray());
        Map<UUID, List<StandingTask>> work = work(agreements);
        Map<UUID, List<StandingVisit>> visits = new HashMap<>();
        try (var ask = connection.prepareStatement(VISITS)) {
            ask.setArray(1, agreements);
            try (ResultSet row = ask.executeQuery()) {
                while (row.next()) {
                    UUID id = row.getObject("id", UUID.class);
                    visits.computeIfAbsent(row.getObject("agreement_id", UUID.class), _ -> new ArrayList<>())
                            .add(new StandingVisit(
                                    id,
                                    new Window(day(row, "window_from"), day(row, "window_until")),
                                    row.getObject("day", LocalDate.class),
                                    row.getBoolean("begun"),
                                    work.getOrDefault(id, List.of())));
                }
            }
        }
        return visits;
    }

    private Map<UUID, List<StandingTask>> work(Array agreements) throws SQLException {
        Map<UUID, List<StandingTask>> work = new HashMap<>();
        try (var ask = connection.prepareStatement(TASKS)) {
            ask.setArray(1, agreements);
            try (ResultSet row = ask.executeQuery()) {
                while (row.next()) {
                    UUID visit = row.getObject("visit_id", UUID.class);
                    if (!row.getString("task_code").equals(YearRows.LOOK_OVER)) {
                        work.computeIfAbsent(visit, _ -> new ArrayList<>())
                                .add(new StandingTask(
                                        row.getObject("id", UUID.class), promise(row), row.getBoolean("put_off")));
                    }
                }
            }
        }
        return work;
    }

    private static Promise promise(ResultSet row) throws SQLException {
        UUID machine = row.getObject("equipment_id", UUID.class);
        Window window = new Window(day(row, "due_from"), day(row, "due_until"));
        return new Promise(
                machine == null ? THE_HOME : machine,
                row.getString("task_code"),
                Who.TECHNICIAN,
                row.getInt("minutes"),
                new Due(
                        window,
                        window.from(),
                        Due.Act.valueOf(row.getString("act").toUpperCase(Locale.ROOT))),
                new Wording(row.getString("reason_en"), row.getString("reason_fr")));
    }

    private static LocalDate day(ResultSet row, String column) throws SQLException {
        return row.getObject(column, LocalDate.class);
    }
}
