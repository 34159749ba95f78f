package changeover.scheduling.visits;

import changeover.contracts.agreements.AgreementsTakenOver;
import changeover.contracts.agreements.CanItBeKept;
import changeover.contracts.agreements.MachinesTakenIn;
import changeover.contracts.agreements.Offer;
import changeover.contracts.agreements.OfferForecast;
import changeover.contracts.calendar.Term;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.customers.ShutTimes;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
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
        return plan(agreementIds, layOut());
    }

    /** The business's catalogue and seasons of today, and the years laid out by them. */
    LaidOutYears layOut() {
        return new LaidOutYears(trade.read());
    }

    int plan(Collection<UUID> agreementIds, LaidOutYears laidOut) {
        List<UUID> ids = List.copyOf(agreementIds);
        int written = 0;
        try (var connection = datasource.getConnection()) {
            var toPlan = new YearsToPlan(connection, laidOut.catalogue());
            for (int from = 0; from < ids.size(); from += TOGETHER) {
                List<YearToPlan> years = toPlan.of(ids.subList(from, Math.min(ids.size(), from + TOGETHER)));
                var rows = new YearRows(laidOut.catalogue());
                years.forEach(year -> rows.add(laidOut.of(year)));
                rows.store(connection);
                written += years.size();
            }
        } catch (SQLException cause) {
            throw new IllegalStateException("the year's visits could not be stored", cause);
        }
        return written;
    }

    /** Writes what is left of years that began before the take-over, and when their tasks were last done. */
    void planRest(AgreementsTakenOver event) {
        OwnCatalogue.Own own = trade.read();
        Map<UUID, AgreementsTakenOver.TakenOver> known = event.agreements().stream()
                .collect(Collectors.toMap(AgreementsTakenOver.TakenOver::agreementId, Function.identity()));
        try (var connection = datasource.getConnection()) {
            List<YearToPlan> years = new YearsToPlan(connection, own.catalogue()).of(known.keySet());
            var rows = new YearRows(own.catalogue());
            var done = new DoneBefore();
            Set<UUID> unread = unread(connection, years);
            for (YearToPlan year : years) {
                AgreementsTakenOver.TakenOver one = Objects.requireNonNull(known.get(year.agreementId()));
                RestOfYear rest = RestOfYear.of(year, one, own, event.day());
                var planned = new PlannedYear(
                        year,
                        rest.plan(),
                        List.copyOf(PlannedYear.standIns(year).keySet()));
                rows.add(planned, unread.contains(year.homeId()));
                done.add(planned, rest, one.lastVisit());
            }
            done.store(connection);
            rows.store(connection);
        } catch (SQLException cause) {
            throw new IllegalStateException("the rest of the years could not be stored", cause);
        }
    }

    private static Set<UUID> unread(Connection connection, List<YearToPlan> years) throws SQLException {
        Set<UUID> unread = new HashSet<>();
        try (var ask = connection.prepareStatement("select id from home where to_be_read and id = any (?)")) {
            ask.setArray(
                    1,
                    connection.createArrayOf(
                            "uuid", years.stream().map(YearToPlan::homeId).toArray()));
            try (var row = ask.executeQuery()) {
                while (row.next()) {
                    unread.add(row.getObject(1, UUID.class));
                }
            }
        }
        return unread;
    }

    /**
     * Lays the years again for machines that came into their agreements; a year that nobody planned yet is left alone. A
     * home's later year builds on its earlier one, so a round takes one year of every home.
     */
    void planAgain(List<MachinesTakenIn.TakenIn> grown) {
        OwnCatalogue.Own own = trade.read();
        try (var connection = datasource.getConnection()) {
            List<MachinesTakenIn.TakenIn> left = new ArrayList<>(grown);
            while (!left.isEmpty()) {
                Map<UUID, MachinesTakenIn.TakenIn> round = new LinkedHashMap<>();
                left.removeIf(one -> round.putIfAbsent(one.homeId(), one) == null);
                planAgain(connection, own, round.values());
            }
        } catch (SQLException cause) {
            throw new IllegalStateException("the year's visits could not be laid out again", cause);
        }
    }

    private static void planAgain(
            Connection connection, OwnCatalogue.Own own, Collection<MachinesTakenIn.TakenIn> round)
            throws SQLException {
        Map<UUID, MachinesTakenIn.TakenIn> grown =
                round.stream().collect(Collectors.toMap(MachinesTakenIn.TakenIn::agreementId, Function.identity()));
        List<YearToPlan> years = new YearsToPlan(connection, own.catalogue()).underWay(grown.keySet());
        Map<UUID, List<StandingVisit>> visits = new YearsUnderWay(connection)
                .of(years.stream().map(YearToPlan::agreementId).toList());
        var rows = new YearAgainRows(new YearRows(own.catalogue()));
        for (YearToPlan year : years) {
            MachinesTakenIn.TakenIn one = Objects.requireNonNull(grown.get(year.agreementId()));
            List<StandingVisit> standing = visits.getOrDefault(year.agreementId(), List.of());
            List<PromisedTask> tasks = year.tasks().stream()
                    .filter(task -> one.machines().contains(task.equipmentId()))
                    .toList();
            PromisesLeft left = PromisesLeft.of(year.term(), tasks, own.seasons(), one.day());
            YearAgain again =
                    YearAgain.of(year, year.visits(), standing, left, own.seasons(), own.longestVisit(), one.day());
            rows.add(year, again, standing);
        }
        rows.store(connection);
    }

    @Override
    public OfferForecast forecast(@Nullable UUID homeId, Term term, int visits, List<Offer.Promised> promises) {
        OwnCatalogue.Own own = trade.read();
        try (var connection = datasource.getConnection()) {
            List<PromisedTask> tasks = new YearsToPlan(connection, own.catalogue()).asOffered(homeId, term, promises);
            ShutTimes shut = homeId == null
                    ? ShutTimes.NEVER
                    : new ShutInYears(connection).ofHomes(List.of(homeId)).getOrDefault(homeId, ShutTimes.NEVER);
            Map<UUID, Map<String, String>> fits = FitsOfMachines.of(
                    connection, tasks.stream().map(PromisedTask::equipmentId).toList());
            return Forecast.of(term, visits, tasks, shut, fits, own);
        } catch (SQLException cause) {
            throw new IllegalStateException("the past of the home could not be read", cause);
        }
    }
}
