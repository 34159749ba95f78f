package changeover.billing.pricing;

import changeover.contracts.words.Checks;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Wording;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/** The zones of travel of the business. */
@ApplicationScoped
public class Zones {

    @Inject
    AgroalDataSource datasource;

    public TravelZones all() {
        try (Connection connection = datasource.getConnection()) {
            return read(connection);
        } catch (SQLException cause) {
            throw new IllegalStateException("the zones could not be read", cause);
        }
    }

    public static TravelZones read(Connection connection) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement("""
                select code, name_en, name_fr, postals, within_km, valid_from, closed from travel_zone
                 order by code, valid_from""")) {
            List<TravelZone> zones = new ArrayList<>();
            ResultSet row = select.executeQuery();
            while (row.next()) {
                zones.add(new TravelZone(
                        row.getString(1),
                        new Wording(row.getString(2), row.getString(3)),
                        Arrays.asList((String[]) row.getArray(4).getArray()),
                        row.getObject(5, Integer.class),
                        row.getObject(6, LocalDate.class),
                        row.getBoolean(7)));
            }
            return new TravelZones(zones);
        }
    }

    /** A zone from a day on, or its end; the same day again replaces it. Two zones never answer for one and the same home. */
    public void set(TravelZone zone) {
        check(zone);
        try (Connection connection = datasource.getConnection();
                PreparedStatement insert = connection.prepareStatement("""
                        insert into travel_zone (code, valid_from, name_en, name_fr, postals, within_km, closed)
                        values (?, ?, ?, ?, ?, ?, ?)
                        on conflict (tenant_id, code, valid_from) do update
                          set name_en = excluded.name_en, name_fr = excluded.name_fr, postals = excluded.postals,
                              within_km = excluded.within_km, closed = excluded.closed""")) {
            insert.setString(1, zone.code());
            insert.setObject(2, zone.from());
            insert.setString(3, zone.name().en());
            insert.setString(4, zone.name().fr());
            insert.setArray(5, connection.createArrayOf("text", zone.postals().toArray()));
            insert.setObject(6, zone.withinKm(), java.sql.Types.INTEGER);
            insert.setBoolean(7, zone.closed());
            insert.executeUpdate();
        } catch (SQLException cause) {
            throw new IllegalStateException("the zone could not be written", cause);
        }
    }

    private void check(TravelZone zone) {
        Checks checks = new Checks();
        checks.refuseIf(
                !zone.code().matches("[a-z0-9][a-z0-9-]{0,29}")
                        || List.of(PriceBook.VISIT, PriceBook.NO_ACCESS).contains(zone.code()),
                "code",
                "zone.code");
        checks.line("nameEn", zone.name().en());
        checks.line("nameFr", zone.name().fr());
        checks.refuseIf(
                !zone.closed() && zone.postals().isEmpty() && zone.withinKm() == null, "postals", "zone.nowhere");
        checks.refuseIf(
                zone.postals().stream().anyMatch(one -> !one.matches("[A-Z0-9]{1,10}")), "postals", "zone.postal");
        checks.refuseIf(
                zone.withinKm() != null && (zone.withinKm() < 1 || zone.withinKm() > 2000), "withinKm", "zone.km");
        if (!zone.closed()) {
            all().on(zone.from()).stream()
                    .filter(other -> !other.code().equals(zone.code()))
                    .forEach(other -> checkApart(checks, zone, other));
        }
        checks.orRefuse();
    }

    private static void checkApart(Checks checks, TravelZone zone, TravelZone other) {
        zone.postals().stream()
                .filter(other.postals()::contains)
                .findFirst()
                .ifPresent(same -> checks.refuse(
                        "postals", Refusal.of("zone.postal-taken", Map.of("postal", same, "zone", other.code()))));
        if (zone.withinKm() != null && zone.withinKm().equals(other.withinKm())) {
            checks.refuse("withinKm", Refusal.of("zone.km-taken", Map.of("zone", other.code())));
        }
    }
}
