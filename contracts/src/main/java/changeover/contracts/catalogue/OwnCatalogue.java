package changeover.contracts.catalogue;

import changeover.contracts.calendar.Changeover;
import changeover.contracts.calendar.Climate;
import changeover.contracts.calendar.Season;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The catalogue as the current business has it: what is shipped, its own kinds and tasks, intervals and seasons over it. */
@ApplicationScoped
public class OwnCatalogue {

    private static final String OWN = """
            select 'kind' as what, code, cast(body as text) as body, cast(withdrawn_on as text) as basis, null as source,
              null as unit, null as decided_by, cast(null as date) as decided_on from own_kind
            union all
            select 'task', code, cast(body as text), cast(withdrawn_on as text), null, null, null, null from own_task
            union all
            select 'interval', task_code, cast(cadence as text), basis, source, cast(equipment_id as text),
              decided_by, decided_on from own_interval
            union all
            (select 'season', code, concat_ws('|', from_month, from_day, until_month, until_day), name_en, name_fr,
              changeover, null, null from season order by position, code)
            union all
            select 'profile', cast(carry_open_season as text), cast(visit_minutes_at_most as text), null, null, null,
              null, null from business_profile
            """;

    @Inject
    EntityManager rows;

    /** Everything of the business's own, read by one statement. */
    public record Own(Catalogue catalogue, List<Interval> intervals, SeasonRules seasons, LongestVisit longestVisit) {}

    public Own read() {
        var kinds = new ArrayList<Kind>();
        var tasks = new ArrayList<Task>();
        var intervals = new ArrayList<Interval>();
        var seasons = new ArrayList<Season>();
        var withdrawn = new HashSet<String>();
        boolean carries = true;
        LongestVisit longest = LongestVisit.ANY;
        for (Tuple row : own()) {
            String code = text(row, "code");
            String body = row.get("body", String.class);
            String what = text(row, "what");
            if ((what.equals("kind") || what.equals("task")) && row.get("basis") != null) {
                withdrawn.add(what + " " + code);
            }
            switch (what) {
                case "kind" -> kinds.add(CatalogueJson.read(body, Kind.class));
                case "task" -> tasks.add(CatalogueJson.read(body, Task.class));
                case "interval" -> intervals.add(interval(row, code, body));
                case "season" -> seasons.add(season(row, code, body.split("\\|")));
                default -> {
                    carries = Boolean.parseBoolean(code);
                    longest = LongestVisit.of(body == null ? null : Integer.valueOf(body));
                }
            }
        }
        Climate climate = seasons.isEmpty() ? Climate.cold() : new Climate(seasons);
        return new Own(
                Catalogue.shipped().with(kinds, tasks).without(withdrawn),
                List.copyOf(intervals),
                new SeasonRules(climate, carries),
                longest);
    }

    public Catalogue catalogue() {
        return read().catalogue();
    }

    public List<Interval> intervals() {
        return read().intervals();
    }

    public SeasonRules seasons() {
        return read().seasons();
    }

    @SuppressWarnings("unchecked")
    private List<Tuple> own() {
        return rows.createNativeQuery(OWN, Tuple.class).getResultList();
    }

    private static Interval interval(Tuple row, String task, String cadence) {
        String unit = row.get("unit", String.class);
        return new Interval(
                task,
                unit == null ? null : UUID.fromString(unit),
                Cadence.ofJson(cadence),
                text(row, "basis"),
                row.get("source", String.class),
                decided(row));
    }

    private static Interval.@Nullable Decided decided(Tuple row) {
        String by = row.get("decided_by", String.class);
        return by == null ? null : new Interval.Decided(by, row.get("decided_on", LocalDate.class));
    }

    private static Season season(Tuple row, String code, String[] days) {
        @Nullable String changeover = row.get("unit", String.class);
        return new Season(
                code,
                text(row, "basis"),
                text(row, "source"),
                MonthDay.of(Integer.parseInt(days[0]), Integer.parseInt(days[1])),
                MonthDay.of(Integer.parseInt(days[2]), Integer.parseInt(days[3])),
                changeover == null ? null : Changeover.ofCode(changeover));
    }

    private static String text(Tuple row, String name) {
        return row.get(name, String.class);
    }
}
