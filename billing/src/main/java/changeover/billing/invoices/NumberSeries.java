package changeover.billing.invoices;

import changeover.contracts.tenants.Businesses;
import changeover.contracts.words.Refusal;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** How the business numbers its documents, and with which number a series begins. */
@ApplicationScoped
public class NumberSeries {

    private static final LocalDate FIRST = LocalDate.of(2010, 1, 1);
    private static final int MONTHS = 600;

    @Inject
    EntityManager rows;

    @Inject
    Businesses businesses;

    @Inject
    AgroalDataSource datasource;

    public SeriesPattern pattern(NumberedKind kind) {
        return chosen(kind)
                .map(Numbering::pattern)
                .orElseGet(() -> kind.usual(businesses.current().language()));
    }

    /** @throws changeover.contracts.words.Refused when the pattern has no number at its end, or is the other kind's on any day */
    public void choose(NumberedKind kind, String pattern) {
        SeriesPattern read = SeriesPattern.of(pattern);
        Arrays.stream(NumberedKind.values())
                .filter(other -> other != kind)
                .flatMap(other -> shared(read, other).stream())
                .findFirst()
                .ifPresent(series -> {
                    throw Refusal.of("numbering.others", Map.of("series", series))
                            .at("pattern")
                            .thrown();
                });
        chosen(kind)
                .ifPresentOrElse(numbering -> numbering.choose(read), () -> rows.persist(Numbering.chosen(kind, read)));
        rows.flush();
    }

    /** A series of the pattern that the other kind has had, or has on some day of half a century. */
    private Optional<String> shared(SeriesPattern read, NumberedKind other) {
        SeriesPattern theirs = pattern(other);
        Set<String> had = had(other);
        return Stream.iterate(FIRST, month -> month.plusMonths(1))
                .limit(MONTHS)
                .filter(month ->
                        had.contains(read.series(month)) || read.series(month).equals(theirs.series(month)))
                .map(read::series)
                .findFirst();
    }

    /** The series in which something of the kind was numbered. */
    private Set<String> had(NumberedKind kind) {
        String given = switch (kind) {
            case INVOICE -> "select distinct series from invoice_issue where kind <> 'credit'";
            case CREDIT -> "select distinct series from invoice_issue where kind = 'credit'";
            case ESTIMATE -> "select distinct series from estimate_offer";
        };
        return Set.copyOf(rows.createNativeQuery(given, String.class).getResultList());
    }

    /**
     * The first number of the series of that day, for a business that has numbered before.
     *
     * @throws changeover.contracts.words.Refused once the series has begun
     */
    public void first(NumberedKind kind, LocalDate day, long number) {
        String series = pattern(kind).series(day);
        if (number < 1) {
            throw Refusal.of("numbering.first").at("number").thrown();
        }
        if (had(kind).contains(series)) {
            throw Refusal.of("numbering.begun", Map.of("series", series))
                    .at("number")
                    .thrown();
        }
        try (Connection connection = datasource.getConnection();
                PreparedStatement insert = connection.prepareStatement("""
                        insert into number_counter (series, first_number, last_number, last_hash) values (?, ?, ?, ?)
                        on conflict (tenant_id, series) do nothing""")) {
            insert.setString(1, series);
            insert.setLong(2, number);
            insert.setLong(3, number - 1);
            insert.setBytes(4, FrozenText.NOTHING);
            if (insert.executeUpdate() == 0) {
                throw Refusal.of("numbering.begun", Map.of("series", series))
                        .at("number")
                        .thrown();
            }
        } catch (SQLException cause) {
            throw new IllegalStateException("the series could not be begun", cause);
        }
    }

    /** How the next document of the kind would be numbered if it were issued on the day. */
    public Next next(NumberedKind kind, LocalDate day) {
        SeriesPattern pattern = pattern(kind);
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement("""
                        select max(n) from (
                          select last_number as n from number_counter where tenant_id = current_tenant() and series = ?
                          union all
                          select max(number) from estimate_offer where tenant_id = current_tenant() and series = ?) given""")) {
            select.setString(1, pattern.series(day));
            select.setString(2, pattern.series(day));
            var row = select.executeQuery();
            row.next();
            long last = row.getLong(1);
            boolean begun = !row.wasNull();
            return new Next(pattern, last + 1, pattern.label(day, last + 1), begun);
        } catch (SQLException cause) {
            throw new IllegalStateException("the series could not be read", cause);
        }
    }

    /** @param begun whether the series has its first number, which can then no longer be chosen */
    public record Next(SeriesPattern pattern, long number, String label, boolean begun) {}

    /** Why no document of the kind may bear the day; empty when it may. */
    public Optional<Refusal> refusal(NumberedKind kind, LocalDate day) {
        try (Connection connection = datasource.getConnection()) {
            return LastIssued.of(connection, pattern(kind).series(day)).flatMap(last -> last.refusal(day));
        } catch (SQLException cause) {
            throw new IllegalStateException("the series could not be read", cause);
        }
    }

    private Optional<Numbering> chosen(NumberedKind kind) {
        return rows.createQuery("from Numbering", Numbering.class)
                .getResultStream()
                .filter(numbering -> numbering.isOf(kind))
                .findFirst();
    }
}
