package changeover.billing.documents;

import changeover.contracts.catalogue.Catalogue;
import io.agroal.api.AgroalDataSource;
import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What was done at a visit and what was not, the parts, the household's tasks until the next visit, and when that is. */
final class ReportWork {

    private static final String TASKS = """
            select e.name, case when ? = 'fr' then t.wording_fr else t.wording_en end, coalesce(o.outcome, 'deferred'), o.reason
            from visit_task t
            left join task_outcome o on o.tenant_id = t.tenant_id and o.visit_task_id = t.id
            left join equipment e on e.tenant_id = t.tenant_id and e.id = t.equipment_id
            where t.tenant_id = current_tenant() and t.visit_id = ?::uuid order by e.position nulls last, e.name, t.position, t.id
            """;
    private static final String PARTS = """
            select u.part_code, u.quantity, case when ? = 'fr' then p.name_fr else p.name_en end, p.size
            from part_used u left join part p on p.tenant_id = u.tenant_id and p.code = u.part_code
            where u.tenant_id = current_tenant() and u.visit_id = ?::uuid order by u.id
            """;
    private static final String HOUSEHOLD = """
            select t.due_on, case when ? = 'fr' then t.wording_fr else t.wording_en end, e.name, t.task_code
            from household_task t left join equipment e on e.tenant_id = t.tenant_id and e.id = t.equipment_id
            where t.tenant_id = current_tenant() and t.home_id = ?::uuid and t.done_on is null
              and t.due_on > ?::date and t.due_on <= ?::date order by t.due_on, t.id
            """;
    private static final String NEXT = """
            select a.day, a.starts, v.window_from, v.window_until - 1
            from visit v left join appointment a on a.tenant_id = v.tenant_id and a.visit_id = v.id
            where v.tenant_id = current_tenant() and v.home_id = ?::uuid
              and not exists (select 1 from visit_ending x where x.tenant_id = v.tenant_id and x.visit_id = v.id)
              and not exists (select 1 from closure c where c.tenant_id = v.tenant_id and c.visit_id = v.id)
              and coalesce(a.day, v.window_until) > ?::date
            order by coalesce(a.day, v.window_from), v.id limit 1
            """;

    private final AgroalDataSource database;
    private final Words words;
    private final Figures figures;

    /** @param starts null when only the weeks are known */
    record Next(@Nullable LocalDate day, @Nullable LocalTime starts, LocalDate from, LocalDate last) {
        LocalDate latest() {
            return day == null ? last : day;
        }
    }

    private record Task(
            @Nullable String machine,
            String task,
            String outcome,
            @Nullable String reason) {}

    ReportWork(AgroalDataSource database, Words words) {
        this.database = database;
        this.words = words;
        this.figures = new Figures(words);
    }

    /** Adds what was done and what was not to the two lists. */
    void tasks(UUID visit, List<ReportSheet.Done> done, List<ReportSheet.NotDone> notDone) {
        Map<String, List<String>> machines = new LinkedHashMap<>();
        for (Task task : new Question(database, TASKS).all(ReportWork::task, language(), visit)) {
            if (task.outcome().equals("done")) {
                String machine = task.machine() == null ? words.say("report.home") : task.machine();
                machines.computeIfAbsent(machine, name -> new ArrayList<>()).add(task.task());
            } else {
                String why = words.say("outcome." + task.outcome())
                        + (task.reason() == null || task.reason().isBlank()
                                ? "."
                                : words.say("card.colon") + task.reason());
                notDone.add(new ReportSheet.NotDone(task.machine(), task.task(), why));
            }
        }
        machines.forEach((machine, tasks) -> done.add(new ReportSheet.Done(machine, tasks)));
    }

    List<ReportSheet.Part> parts(UUID visit, Catalogue catalogue) {
        return new Question(database, PARTS).all(row -> part(row, catalogue), language(), visit);
    }

    private ReportSheet.Part part(ResultSet row, Catalogue catalogue) throws SQLException {
        String code = row.getString(1);
        String named = row.getString(3);
        String size = row.getString(4);
        String name = named != null
                ? named
                : catalogue
                        .findPart(code)
                        .map(kind -> kind.wording().in(words.language()))
                        .orElse(code);
        BigDecimal quantity = row.getBigDecimal(2);
        boolean sized = size != null && !size.isBlank() && !name.contains(size);
        return new ReportSheet.Part(figures.number(quantity), sized ? name + " " + size : name);
    }

    /** The same task is said once, with its other days behind it. */
    List<ReportSheet.ByYou> household(UUID home, LocalDate after, LocalDate until, Set<String> codes) {
        Map<String, List<ReportSheet.ByYou>> same = new LinkedHashMap<>();
        new Question(database, HOUSEHOLD)
                .all(
                        row -> {
                            codes.add(row.getString(4));
                            return new ReportSheet.ByYou(
                                    row.getObject(1, LocalDate.class), row.getString(2), row.getString(3));
                        },
                        language(),
                        home,
                        after,
                        until)
                .forEach(task -> same.computeIfAbsent(task.task() + "|" + task.equipment(), key -> new ArrayList<>())
                        .add(task));
        return same.values().stream().map(this::once).toList();
    }

    private ReportSheet.ByYou once(List<ReportSheet.ByYou> times) {
        ReportSheet.ByYou first = times.getFirst();
        if (times.size() == 1) {
            return first;
        }
        Set<String> days = new LinkedHashSet<>();
        times.subList(1, times.size()).forEach(time -> days.add(figures.shortDay(time.until())));
        String again = words.say("report.again", "days", String.join(", ", days));
        return new ReportSheet.ByYou(first.until(), first.task() + ", " + again, first.equipment());
    }

    Optional<Next> next(UUID home, LocalDate after) {
        return new Question(database, NEXT)
                .first(
                        row -> new Next(
                                row.getObject(1, LocalDate.class),
                                row.getObject(2, LocalTime.class),
                                row.getObject(3, LocalDate.class),
                                row.getObject(4, LocalDate.class)),
                        home,
                        after);
    }

    String said(Next next) {
        if (next.day() == null) {
            return words.say(
                    "report.between", Map.of("from", figures.day(next.from()), "until", figures.day(next.last())));
        }
        String hour = next.starts() == null ? "" : ", " + figures.time(next.starts());
        return figures.day(next.day()) + hour;
    }

    private String language() {
        return words.isFrench() ? "fr" : "en";
    }

    private static Task task(ResultSet row) throws SQLException {
        return new Task(row.getString(1), row.getString(2), row.getString(3), row.getString(4));
    }
}
