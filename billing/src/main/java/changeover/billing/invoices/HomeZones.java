package changeover.billing.invoices;

import changeover.billing.pricing.TravelZones;
import changeover.billing.pricing.ZoneOfHome;
import changeover.billing.pricing.Zones;
import changeover.scheduling.dayplan.routes.AsTheCrowFlies;
import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** In which zone of the business a home lies on a day, by its postal code or by its distance from the shop. */
@ApplicationScoped
public class HomeZones {

    /** Empty while the business has no zones. */
    public Optional<ZoneOfHome> of(Connection connection, UUID home, LocalDate day) throws SQLException {
        TravelZones zones = Zones.read(connection);
        if (zones.on(day).isEmpty()) {
            return Optional.empty();
        }
        try (PreparedStatement select = connection.prepareStatement("""
                select h.postal, b.latitude, b.longitude, h.latitude, h.longitude
                  from home h cross join business_profile b where h.id = ?""")) {
            select.setObject(1, home);
            ResultSet row = select.executeQuery();
            return row.next()
                    ? zones.of(
                            day,
                            row.getString(1),
                            kilometres(
                                    row.getBigDecimal(2),
                                    row.getBigDecimal(3),
                                    row.getBigDecimal(4),
                                    row.getBigDecimal(5)))
                    : Optional.empty();
        }
    }

    private static @Nullable BigDecimal kilometres(
            @Nullable BigDecimal shopLatitude,
            @Nullable BigDecimal shopLongitude,
            @Nullable BigDecimal latitude,
            @Nullable BigDecimal longitude) {
        return shopLatitude == null || shopLongitude == null || latitude == null || longitude == null
                ? null
                : TravelZones.kilometres(AsTheCrowFlies.metres(shopLatitude, shopLongitude, latitude, longitude));
    }
}
