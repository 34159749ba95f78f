package changeover.billing.pricing;

import changeover.billing.periods.Periods;
import changeover.contracts.words.Refusal;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The price book of the business. What was earned in closed days was split by its prices, so none begins there any more. */
@ApplicationScoped
public class Prices {

    @Inject
    EntityManager session;

    @Inject
    AgroalDataSource datasource;

    @Inject
    Periods periods;

    /** Everything ever priced: a day picks from it. */
    public PriceBook book() {
        return read(PriceRows::book);
    }

    /** Only these items, with labour and travel: for the charges of some visits. */
    public PriceBook of(Collection<String> parts) {
        return read(connection -> PriceRows.book(connection, parts));
    }

    /** What was written, item by item and day by day: costs without a price too. */
    public List<PriceRow> written() {
        return read(connection -> PriceRows.written(connection, null));
    }

    /** A price from a day on; the same item and day again replaces it. Issued documents keep what they say. */
    public void set(PriceEntry entry) {
        write(new PriceRow(entry.kind(), entry.code(), null, entry.price(), entry.cost(), entry.from()));
    }

    /** The same, where a part's price may be left to its mark-up; refused where none is for it on that day. */
    public void write(PriceRow row) {
        periods.check(row.from(), "from");
        refuseCharged(List.of(row));
        find(row).ifPresentOrElse(price -> price.says(row), () -> session.persist(Price.of(row)));
        session.flush();
        if (row.price() == null && !isMarkedUp(row)) {
            throw Refusal.of("price.no-mark-up").at("price").thrown();
        }
    }

    /** Many prices that were judged before: a version of the book, a file. The same item and day again is replaced. */
    public void writeAll(List<PriceRow> rows) {
        if (!rows.isEmpty()) {
            rows.stream()
                    .map(PriceRow::from)
                    .min(Comparator.naturalOrder())
                    .ifPresent(day -> periods.check(day, "from"));
            refuseCharged(rows);
            read(connection -> PriceRows.write(connection, rows));
        }
    }

    /** Prices that have not begun are taken back; refused once their day has come, for work may have been charged by them. */
    public void takeBack(LocalDate day, LocalDate today) {
        if (!day.isAfter(today)) {
            throw Refusal.of("price.begun").at("day").thrown();
        }
        session.createQuery("delete from Price where validFrom = :day")
                .setParameter("day", day)
                .executeUpdate();
    }

    /** A price that an issued document used is followed by a newer one, never written over; its cost may be put right. */
    private void refuseCharged(List<PriceRow> rows) {
        if (!charged(rows).isEmpty()) {
            throw Refusal.of("price.charged").at("from").thrown();
        }
    }

    /** Which of these would write over a price that was charged. */
    public Set<PriceRow.Item> charged(List<PriceRow> rows) {
        return rows.isEmpty() ? Set.of() : read(connection -> PriceRows.otherPriceCharged(connection, rows));
    }

    private boolean isMarkedUp(PriceRow row) {
        return of(List.of(row.code()))
                .on(row.kind(), row.code(), row.from())
                .filter(entry -> entry.by() != null)
                .isPresent();
    }

    private Optional<Price> find(PriceRow row) {
        return session.createQuery(
                        "from Price where itemKind = :kind and itemCode = :code and validFrom = :from", Price.class)
                .setParameter("kind", row.kind().code())
                .setParameter("code", row.code())
                .setParameter("from", row.from())
                .getResultStream()
                .peek(session::refresh)
                .findFirst();
    }

    private interface Reading<T> {
        T of(Connection connection) throws SQLException;
    }

    private <T> T read(Reading<T> reading) {
        session.flush();
        try (Connection connection = datasource.getConnection()) {
            return reading.of(connection);
        } catch (SQLException cause) {
            throw new IllegalStateException("the price book could not be read", cause);
        }
    }
}
