package changeover.scheduling.dayplan;

import changeover.scheduling.visits.VisitKind;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

/** What calendars are told from a day on: a technician's visits, or a home's, those that fell away among them. */
@ApplicationScoped
public class CalendarEntries {

    /** At most so many; the next ones come into the calendar when the first are past. */
    private static final int MOST = 2_000;

    private static final String COLUMNS = """
            select e.visit_id, v.kind, v.minutes, e.day, e.starts, e.ends, e.cancelled, e.sequence, e.changed_at,
                   coalesce(l.name, m.name), h.street, h.unit_label, h.city, e.confirmed, e.goes_along
            """;

    private static final String JOINED = """
              join visit v on v.tenant_id = e.tenant_id and v.id = e.visit_id
              join home h on h.tenant_id = v.tenant_id and h.id = v.home_id
              join membership m on m.tenant_id = e.tenant_id and m.person_id = e.technician_id
              left join appointment a on e.goes_along and a.tenant_id = e.tenant_id and a.visit_id = e.visit_id
              left join membership l on l.tenant_id = a.tenant_id and l.person_id = a.technician_id
             where e.day >= ?
            """;

    private static final String ORDERED = " order by e.day, e.starts, e.visit_id limit " + MOST;

    private static final String OF_TECHNICIAN =
            COLUMNS + " from calendar_entry e " + JOINED + " and e.technician_id = ?" + ORDERED;

    /** A visit that went from one technician to another is one visit of the home. */
    private static final String OF_HOME = COLUMNS + """
             from (
              select distinct on (c.visit_id) c.* from calendar_entry c
                join visit w on w.tenant_id = c.tenant_id and w.id = c.visit_id
               where w.home_id = ? and not c.goes_along order by c.visit_id, c.cancelled, c.sequence desc) e
            """ + JOINED + ORDERED;

    @Inject
    AgroalDataSource datasource;

    public List<CalendarEntry> ofTechnician(UUID person, LocalDate from) {
        return read(OF_TECHNICIAN, from, person);
    }

    public List<CalendarEntry> ofHome(UUID home, LocalDate from) {
        return read(OF_HOME, home, from);
    }

    private List<CalendarEntry> read(String sql, Object first, Object second) {
        List<CalendarEntry> entries = new ArrayList<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement(sql)) {
            select.setObject(1, first);
            select.setObject(2, second);
            ResultSet row = select.executeQuery();
            while (row.next()) {
                entries.add(of(row));
            }
            return entries;
        } catch (SQLException cause) {
            throw new IllegalStateException("what calendars are told could not be read", cause);
        }
    }

    private static CalendarEntry of(ResultSet row) throws SQLException {
        return new CalendarEntry(
                row.getObject(1, UUID.class),
                VisitKind.ofCode(row.getString(2)),
                row.getInt(3),
                row.getObject(4, LocalDate.class),
                row.getObject(5, LocalTime.class),
                row.getObject(6, LocalTime.class),
                row.getBoolean(7),
                row.getBoolean(14),
                row.getBoolean(15),
                row.getInt(8),
                row.getObject(9, OffsetDateTime.class).toInstant(),
                row.getString(10),
                row.getString(11),
                row.getString(12),
                row.getString(13));
    }
}
