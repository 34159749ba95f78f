package changeover.billing.invoices;

import changeover.billing.pricing.OutsideHours;
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
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;

/**
 * The minutes of a call outside the working hours, from when the technician arrived until they left, those of a weekend and
 * of a holiday apart; none while either time is unknown.
 */
@ApplicationScoped
class NightMinutes {

    @Inject
    Rosters rosters;

    @Inject
    Businesses businesses;

    OutsideHours minutes(Connection connection, VisitClosed closed) throws SQLException {
        if (!closed.visitKind().equals("call")) {
            return OutsideHours.NONE;
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
                    : OutsideHours.NONE;
        }
    }

    private OutsideHours outside(Instant arrived, Instant left) {
        ZoneId zone = businesses.current().zone();
        LocalDate first = LocalDate.ofInstant(arrived, zone);
        LocalDate last = LocalDate.ofInstant(left, zone);
        Roster roster = rosters.of(new Window(first, last.plusDays(1)));
        int weekend = 0;
        int holiday = 0;
        for (LocalDate day = first; !day.isAfter(last); day = day.plusDays(1)) {
            int minutes = AfterHours.minutes(
                    later(arrived, day.atStartOfDay(zone).toInstant()),
                    earlier(left, day.plusDays(1).atStartOfDay(zone).toInstant()),
                    zone,
                    roster::open);
            if (roster.isHoliday(day)) {
                holiday += minutes;
            } else if (day.getDayOfWeek().compareTo(DayOfWeek.SATURDAY) >= 0) {
                weekend += minutes;
            }
        }
        int whole = AfterHours.minutes(arrived, left, zone, roster::open);
        return new OutsideHours(whole - weekend - holiday, weekend, holiday);
    }

    private static Instant later(Instant one, Instant other) {
        return one.isAfter(other) ? one : other;
    }

    private static Instant earlier(Instant one, Instant other) {
        return one.isBefore(other) ? one : other;
    }
}
