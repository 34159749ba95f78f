package changeover.scheduling.dayplan;

import changeover.contracts.calendar.Window;
import changeover.scheduling.visits.GivenOut;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The weeks of the current business, by one statement and its roster. */
@ApplicationScoped
public class SeasonLoads {

    private static final String MINUTES = """
            select case when w.id is not null then 'off' when e.how = 'closed' then 'closed' when e.id is not null then 'off'
                when a.id is not null then 'day' else 'waiting' end as state,
              coalesce(e.day, a.day) as day, case when coalesce(e.day, a.day) is null then v.window_from end as opens,
              case when coalesce(e.day, a.day) is null then v.window_until end as until, sum(v.minutes) as minutes
            from visit v
            left join visit_ending e on e.tenant_id = v.tenant_id and e.visit_id = v.id
            left join appointment a on a.tenant_id = v.tenant_id and a.visit_id = v.id
            """ + GivenOut.JOINED + """
            where (e.id is null and v.window_from < :until)
              or (e.how = 'closed' and e.day >= :from and e.day < :until)
            group by 1, 2, 3, 4
            """;

    @Inject
    EntityManager rows;

    @Inject
    Rosters rosters;

    /** @param window the days wanted; whole weeks are given */
    public SeasonLoad of(Window window, LocalDate today) {
        Window weeks = new Window(
                SeasonLoad.monday(window.from()),
                SeasonLoad.monday(window.last()).plusWeeks(1));
        var closed = new HashMap<LocalDate, Integer>();
        var withDay = new HashMap<LocalDate, Integer>();
        var waiting = new ArrayList<SeasonLoad.Waiting>();
        for (Tuple row : minutes(weeks)) {
            int minutes = row.get("minutes", Long.class).intValue();
            switch (row.get("state", String.class)) {
                case "closed" -> closed.merge(row.get("day", LocalDate.class), minutes, Integer::sum);
                case "day" -> withDay.merge(row.get("day", LocalDate.class), minutes, Integer::sum);
                case "waiting" ->
                    waiting.add(new SeasonLoad.Waiting(
                            new Window(row.get("opens", LocalDate.class), row.get("until", LocalDate.class)), minutes));
                default -> {}
            }
        }
        Map<LocalDate, Integer> capacity = rosters.of(weeks).minutes(weeks);
        return SeasonLoad.of(weeks, today, closed, withDay, waiting, capacity);
    }

    @SuppressWarnings("unchecked")
    private List<Tuple> minutes(Window weeks) {
        return rows.createNativeQuery(MINUTES, Tuple.class)
                .setParameter("from", weeks.from())
                .setParameter("until", weeks.until())
                .getResultList();
    }
}
