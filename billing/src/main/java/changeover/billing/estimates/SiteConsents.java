package changeover.billing.estimates;

import changeover.contracts.words.Refusal;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.UUID;

/** Where the owner has set whether repairs may be signed on the spot; a row is followed by a newer one and never changed. */
@ApplicationScoped
public class SiteConsents {

    private static final int SHORTEST_SOURCE = 10;

    @Inject
    AgroalDataSource datasource;

    /** By place, the newest first. */
    public List<SiteConsent> all() {
        List<SiteConsent> rows = new ArrayList<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement("""
                        select id, region, from_day, allowed, source from site_consent order by region, from_day desc""")) {
            ResultSet row = select.executeQuery();
            while (row.next()) {
                rows.add(new SiteConsent(
                        row.getObject(1, UUID.class),
                        row.getString(2),
                        row.getObject(3, LocalDate.class),
                        row.getBoolean(4),
                        row.getString(5)));
            }
            return rows;
        } catch (SQLException cause) {
            throw new IllegalStateException("what may be signed on the spot could not be read", cause);
        }
    }

    /** @throws changeover.contracts.words.Refused without a place or a source, or for a day that has its row */
    public UUID set(String region, LocalDate from, boolean allowed, String source) {
        String place = region.strip().toUpperCase(Locale.ROOT);
        if (!place.matches("[A-Z]{2}-[A-Z0-9]{1,3}")) {
            throw Refusal.of("tax.region-shape").at("region").thrown();
        }
        if (source.strip().length() < SHORTEST_SOURCE) {
            throw Refusal.of("estimate.source-missing").at("source").thrown();
        }
        try (Connection connection = datasource.getConnection();
                PreparedStatement insert = connection.prepareStatement("""
                        insert into site_consent (region, from_day, allowed, source) values (?, ?, ?, ?) returning id""")) {
            insert.setString(1, place);
            insert.setObject(2, from);
            insert.setBoolean(3, allowed);
            insert.setString(4, source.strip());
            ResultSet row = insert.executeQuery();
            row.next();
            return row.getObject(1, UUID.class);
        } catch (SQLException cause) {
            throw new IllegalStateException("what may be signed on the spot could not be kept", cause);
        }
    }
}
