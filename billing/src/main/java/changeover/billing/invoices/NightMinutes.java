package changeover.billing.invoices;

import changeover.contracts.calendar.Window;
import changeover.contracts.tenants.Businesses;
import changeover.scheduling.closeout.VisitClosed;
import changeover.scheduling.dayplan.AfterHours;
import changeover.scheduling.dayplan.Roster;
import changeover.scheduling.dayplan.Rosters;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;

/** The minutes of a call outside the working hours, from when the technician arrived until they left; none while either is unknown. */
@ApplicationScoped
class NightMinutes {

    @Inject
    Rosters rosters;

    @Inject
    Businesses businesses;

    int minutes(Connection connection, VisitClosed closed) throws SQLException {
        if (!closed.visitKind().equals("call")) {
            return 0;
        }
        try (PreparedStatement select = connection.prepareStatement("""
                select arrived_at, left_at from closure
                 where visit_id = ? and arrived_at is not null and left_at > arrived_at""")) {
            select.setObject(1, closed.visitId());
            ResultSet row = select.executeQuery();
            return row.next()
                    ? outside(
                            row.getObject(1, OffsetDateTime.class).toInstant(),
                            row.getObject(2, OffsetDateTime.class).toInstant())
                    : 0;
        }
    }

    private int outside(Instant arrived, Instant left) {
        ZoneId zone = businesses.current().zone();
        LocalDate first = LocalDate.ofInstant(arrived, zone);
        Roster roster =
                rosters.of(new Window(first, LocalDate.ofInstant(left, zone).plusDays(1)));
        return AfterHours.minutes(arrived, left, zone, roster::open);
    }
}
