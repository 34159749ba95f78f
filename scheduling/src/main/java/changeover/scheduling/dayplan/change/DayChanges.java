package changeover.scheduling.dayplan.change;

import changeover.contracts.tenants.ManyRows;
import changeover.scheduling.dayplan.Minutes;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Writes what becomes of a day: hours that move together, and days that are given back. */
@ApplicationScoped
public class DayChanges {

    /** An hour that moves, or a technician: the day stays. */
    public record Move(UUID visit, UUID technician, LocalTime starts, LocalTime ends) {}

    @Inject
    AgroalDataSource database;

    /** All at once, since two may change places; refused as a whole where somebody would be in two places. */
    public void move(LocalDate day, List<Move> moves) {
        if (moves.isEmpty()) {
            return;
        }
        try (Connection connection = database.getConnection();
                PreparedStatement later =
                        connection.prepareStatement("set constraints technician_is_elsewhere deferred");
                PreparedStatement move = connection.prepareStatement("""
                        update appointment a set technician_id = m.technician, starts = m.starts, ends = m.ends,
                            version = a.version + 1
                          from unnest(?::uuid[], ?::uuid[], ?::time[], ?::time[]) as m (visit, technician, starts, ends)
                         where a.tenant_id = current_tenant() and a.day = ? and a.visit_id = m.visit""");
                PreparedStatement now =
                        connection.prepareStatement("set constraints technician_is_elsewhere immediate")) {
            later.execute();
            move.setArray(
                    1,
                    connection.createArrayOf(
                            "uuid", moves.stream().map(Move::visit).toArray()));
            move.setArray(
                    2,
                    connection.createArrayOf(
                            "uuid", moves.stream().map(Move::technician).toArray()));
            move.setArray(
                    3,
                    connection.createArrayOf(
                            "time",
                            moves.stream()
                                    .map(Move::starts)
                                    .map(Object::toString)
                                    .toArray()));
            move.setArray(
                    4,
                    connection.createArrayOf(
                            "time",
                            moves.stream().map(Move::ends).map(Object::toString).toArray()));
            move.setObject(5, day);
            move.executeUpdate();
            now.execute();
        } catch (SQLException cause) {
            throw new IllegalStateException("the hours could not be moved", cause);
        }
    }

    /** A visit that goes to another day. */
    public record Elsewhere(UUID visit, UUID technician, LocalDate day, LocalTime starts, LocalTime ends) {}

    /** Visits that go to other days, all at once; refused as a whole where somebody would be in two places. */
    public void elsewhere(List<Elsewhere> moves) {
        if (moves.isEmpty()) {
            return;
        }
        try (Connection connection = database.getConnection();
                PreparedStatement move = connection.prepareStatement("""
                        update appointment a set technician_id = m.technician, day = m.day, starts = m.starts, ends = m.ends,
                            version = a.version + 1
                          from unnest(?::uuid[], ?::uuid[], ?::date[], ?::time[], ?::time[])
                            as m (visit, technician, day, starts, ends)
                         where a.tenant_id = current_tenant() and a.visit_id = m.visit""")) {
            set(connection, move, 1, "uuid", moves, Elsewhere::visit);
            set(connection, move, 2, "uuid", moves, Elsewhere::technician);
            set(connection, move, 3, "date", moves, Elsewhere::day);
            set(connection, move, 4, "time", moves, Elsewhere::starts);
            set(connection, move, 5, "time", moves, Elsewhere::ends);
            move.executeUpdate();
        } catch (SQLException cause) {
            throw new IllegalStateException("the visits could not be moved", cause);
        }
    }

    private static <T> void set(
            Connection connection, PreparedStatement to, int at, String type, List<T> rows, Function<T, Object> which)
            throws SQLException {
        Object[] texts = rows.stream().map(which).map(Object::toString).toArray();
        to.setArray(at, connection.createArrayOf(type, texts));
    }

    /** @param technician who goes along now; null for nobody */
    public record Along(UUID visit, @Nullable UUID technician) {}

    /** Who goes along to visits, anew. */
    public void along(List<Along> changed) {
        if (changed.isEmpty()) {
            return;
        }
        try (Connection connection = database.getConnection();
                PreparedStatement nobody = connection.prepareStatement(
                        "delete from appointment_second where tenant_id = current_tenant() and visit_id = any (?)");
                PreparedStatement somebody = connection.prepareStatement("""
                        insert into appointment_second (visit_id, technician_id, day, starts, ends)
                        select a.visit_id, m.technician, a.day, a.starts, a.ends from appointment a
                          join unnest(?::uuid[], ?::uuid[]) as m (visit, technician) on m.visit = a.visit_id
                         where a.tenant_id = current_tenant() and m.technician is not null""")) {
            Object[] visits = changed.stream().map(Along::visit).toArray();
            nobody.setArray(1, connection.createArrayOf("uuid", visits));
            nobody.executeUpdate();
            somebody.setArray(1, connection.createArrayOf("uuid", visits));
            somebody.setArray(
                    2,
                    connection.createArrayOf(
                            "uuid", changed.stream().map(Along::technician).toArray()));
            somebody.executeUpdate();
        } catch (SQLException cause) {
            throw new IllegalStateException("who goes along could not be written", cause);
        }
    }

    /** These visits have no day any more. */
    public void giveBack(Collection<UUID> visits) {
        try (Connection connection = database.getConnection();
                PreparedStatement back = connection.prepareStatement(
                        "delete from appointment where tenant_id = current_tenant() and visit_id = any (?)")) {
            back.setArray(1, connection.createArrayOf("uuid", visits.toArray()));
            back.executeUpdate();
        } catch (SQLException cause) {
            throw new IllegalStateException("the days could not be given back", cause);
        }
    }

    /** Whoever must hear of it, written before anything moves. */
    public void toRing(LocalDate day, UUID technician, List<SharedOut.Share> shares, String why) {
        var rows = ManyRows.into(
                "to_ring",
                "visit_id uuid, was_day date, was_starts time, was_technician_id uuid, was_told boolean, why text");
        shares.forEach(one -> rows.add(one.visit(), day, Minutes.time(one.was()), technician, one.told(), why));
        try (Connection connection = database.getConnection()) {
            rows.store(connection);
        } catch (SQLException cause) {
            throw new IllegalStateException("the list to ring could not be written", cause);
        }
    }
}
