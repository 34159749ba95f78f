package changeover.billing.fees;

import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
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
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;

/** The fees that the business set; without a row for a place nothing is asked there. */
@ApplicationScoped
public class Fees {

    private static final String ROWS = "select id, kind, region, from_day, amount_minor, source"
            + " from fee order by kind desc, region, from_day desc";
    private static final int SHORTEST_SOURCE = 10;

    @Inject
    AgroalDataSource datasource;

    @Inject
    Businesses businesses;

    /** By place, the newest first. */
    public List<Fee> all() {
        Currency currency = businesses.current().currency();
        List<Fee> fees = new ArrayList<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement(ROWS)) {
            ResultSet row = select.executeQuery();
            while (row.next()) {
                fees.add(new Fee(
                        row.getObject(1, UUID.class),
                        FeeKind.of(row.getString(2)).orElseThrow(),
                        row.getString(3),
                        row.getObject(4, LocalDate.class),
                        new Money(row.getLong(5), currency),
                        row.getString(6)));
            }
            return fees;
        } catch (SQLException cause) {
            throw new IllegalStateException("the fees could not be read", cause);
        }
    }

    /** What is asked in the place on the day; empty where nothing is. */
    public Optional<Fee> on(FeeKind kind, String region, LocalDate day) {
        return Fee.on(all(), kind, region, day);
    }

    /** @throws changeover.contracts.words.Refused without a place or a source, or for a day that has its fee */
    public UUID set(FeeKind kind, String region, LocalDate from, Money amount, String source) {
        String place = region.strip().toUpperCase(Locale.ROOT);
        if (!place.matches("[A-Z]{2}-[A-Z0-9]{1,3}")) {
            throw Refusal.of("tax.region-shape").at("region").thrown();
        }
        if (source.strip().length() < SHORTEST_SOURCE) {
            throw Refusal.of("fee.source-missing").at("source").thrown();
        }
        try (Connection connection = datasource.getConnection();
                PreparedStatement insert = connection.prepareStatement("""
                        insert into fee (kind, region, from_day, amount_minor, currency, source)
                        values (?, ?, ?, ?, ?, ?) returning id""")) {
            insert.setString(1, kind.code());
            insert.setString(2, place);
            insert.setObject(3, from);
            insert.setLong(4, amount.minor());
            insert.setString(5, amount.currency().getCurrencyCode());
            insert.setString(6, source.strip());
            ResultSet row = insert.executeQuery();
            row.next();
            return row.getObject(1, UUID.class);
        } catch (SQLException cause) {
            throw new IllegalStateException("the fee could not be kept", cause);
        }
    }
}
