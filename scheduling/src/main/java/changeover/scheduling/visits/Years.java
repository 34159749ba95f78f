package changeover.scheduling.visits;

import changeover.contracts.agreements.CanItBeKept;
import changeover.contracts.agreements.Offer;
import changeover.contracts.agreements.OfferForecast;
import changeover.contracts.calendar.Term;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.catalogue.SeasonRules;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The planned years of the current business's agreements: each agreement's year is written once. */
@ApplicationScoped
public class Years implements CanItBeKept {

    /** Years written by one round of statements. */
    private static final int TOGETHER = 500;

    @Inject
    AgroalDataSource datasource;

    @Inject
    OwnCatalogue trade;

    /**
     * Writes the visits, the household's tasks and what is not kept for agreements that have none yet.
     *
     * @return how many years were written
     */
    public int plan(Collection<UUID> agreementIds) {
        List<UUID> ids = List.copyOf(agreementIds);
        OwnCatalogue.Own own = trade.read();
        int written = 0;
        try (var connection = datasource.getConnection()) {
            var toPlan = new YearsToPlan(connection, own.catalogue());
            for (int from = 0; from < ids.size(); from += TOGETHER) {
                List<YearToPlan> years = toPlan.of(ids.subList(from, Math.min(ids.size(), from + TOGETHER)));
                write(connection, years, own);
                written += years.size();
            }
        } catch (SQLException cause) {
            throw new IllegalStateException("the year's visits could not be stored", cause);
        }
        return written;
    }

    private static void write(Connection connection, List<YearToPlan> years, OwnCatalogue.Own own) throws SQLException {
        var rows = new YearRows(own.catalogue());
        for (YearToPlan year : years) {
            rows.add(planned(year, own.seasons()));
        }
        rows.store(connection);
    }

    private static PlannedYear planned(YearToPlan year, SeasonRules seasons) {
        List<Promise> promises = Promises.in(year.term(), year.tasks(), seasons);
        VisitPlan plan = VisitPlan.of(promises, year.visits(), year.term(), List.of(), seasons);
        return new PlannedYear(year, plan);
    }

    @Override
    public OfferForecast forecast(@Nullable UUID homeId, Term term, int visits, List<Offer.Promised> promises) {
        OwnCatalogue.Own own = trade.read();
        try (var connection = datasource.getConnection()) {
            List<PromisedTask> tasks = new YearsToPlan(connection, own.catalogue()).asOffered(homeId, term, promises);
            return Forecast.of(term, visits, tasks, own);
        } catch (SQLException cause) {
            throw new IllegalStateException("the past of the home could not be read", cause);
        }
    }
}
