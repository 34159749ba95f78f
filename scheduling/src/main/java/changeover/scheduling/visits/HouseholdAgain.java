package changeover.scheduling.visits;

import changeover.contracts.calendar.Term;
import changeover.contracts.catalogue.Cadence;
import changeover.contracts.catalogue.Due;
import changeover.contracts.catalogue.History;
import changeover.contracts.catalogue.SeasonRules;
import changeover.contracts.customers.ShutTimes;
import changeover.contracts.words.Wording;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import jakarta.persistence.Tuple;
import java.sql.Array;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What a household still has to do is counted anew from the last time it was done. What was done stays as it was told, and
 * so does what was due before the day; what was due in the month before the last time was done with it.
 */
@ApplicationScoped
public class HouseholdAgain {

    private static final String OWED = """
            select p.agreement_id, a.home_id, p.equipment_id, p.task_code, cast(p.cadence as text) as cadence, a.term_from,
              a.term_until, greatest(a.term_from, o.day) as begins
              from agreement_promise p
              join agreement a on a.tenant_id = p.tenant_id and a.id = p.agreement_id
              left join agreement_taken_over o on o.tenant_id = a.tenant_id and o.agreement_id = a.id
              join year_planned y on y.tenant_id = a.tenant_id and y.agreement_id = a.id
             where a.tenant_id = current_tenant() and a.home_id in :homes and a.term_until > :day
               and p.who = 'household' and p.equipment_id in :units
               and not exists (select from agreement_ending n where n.tenant_id = a.tenant_id and n.agreement_id = a.id)
             order by a.term_from, p.agreement_id, p.position
            """;

    private static final String DONE_WITH_IT = """
            update household_task set done_on = :last, done_by = :by
             where tenant_id = current_tenant() and agreement_id = :agreement and equipment_id = :unit and task_code = :task
               and done_on is null and due_on <= :last and due_on > :month
            """;

    /** What is open takes the new days in their order; what is over goes, what lacks is added. */
    private static final String LAID_AGAIN = """
            with due as (
              select * from unnest(?::date[], ?::date[], ?::text[], ?::text[], ?::text[])
                with ordinality as d (due_from, due_on, act, en, fr, n)),
            open as (
              select id, row_number() over (order by due_on, id) as n from household_task
               where tenant_id = current_tenant() and agreement_id = ? and equipment_id = ? and task_code = ?
                 and done_on is null and due_on >= ?),
            moved as (
              update household_task k set due_from = d.due_from, due_on = d.due_on, act = d.act, wording_en = d.en,
                wording_fr = d.fr
                from open o join due d on d.n = o.n
               where k.tenant_id = current_tenant() and k.id = o.id
                 and (k.due_from, k.due_on, k.act, k.wording_en, k.wording_fr)
                     is distinct from (d.due_from, d.due_on, d.act, d.en, d.fr)),
            gone as (
              delete from household_task k using open o
               where k.tenant_id = current_tenant() and k.id = o.id and o.n > (select count(*) from due))
            insert into household_task (home_id, agreement_id, equipment_id, task_code, wording_en, wording_fr, due_from,
              due_on, act)
            select ?, ?, ?, ?, d.en, d.fr, d.due_from, d.due_on, d.act from due d
             where d.n > (select count(*) from open)
            """;

    @Inject
    EntityManager rows;

    @Inject
    AgroalDataSource datasource;

    /**
     * What a household owes one machine under one agreement, as it was sold.
     *
     * @param begins the first day of the agreement here: of its term, or of the take-over
     * @param shut when the home is
     */
    public record Owing(
            UUID agreementId,
            UUID homeId,
            UUID unit,
            String taskCode,
            Cadence sold,
            Term term,
            LocalDate begins,
            ShutTimes shut) {}

    /** The last time and who had done it. */
    public record Last(LocalDate day, String by) {}

    /** Under agreements that have not ended by the day, the next one's too where it is sold. */
    public List<Owing> owed(Collection<UUID> homes, Collection<UUID> units, LocalDate day) {
        if (homes.isEmpty() || units.isEmpty()) {
            return List.of();
        }
        @SuppressWarnings("unchecked")
        List<Tuple> found = rows.createNativeQuery(OWED, Tuple.class)
                .setParameter("homes", homes)
                .setParameter("units", units)
                .setParameter("day", day)
                .getResultList();
        Map<UUID, ShutTimes> shut = found.isEmpty() ? Map.of() : shut(homes);
        return found.stream()
                .map(row -> new Owing(
                        row.get("agreement_id", UUID.class),
                        row.get("home_id", UUID.class),
                        row.get("equipment_id", UUID.class),
                        row.get("task_code", String.class),
                        Cadence.ofJson(row.get("cadence", String.class)),
                        new Term(row.get("term_from", LocalDate.class), row.get("term_until", LocalDate.class)),
                        row.get("begins", LocalDate.class),
                        shut.getOrDefault(row.get("home_id", UUID.class), ShutTimes.NEVER)))
                .toList();
    }

    private Map<UUID, ShutTimes> shut(Collection<UUID> homes) {
        try (var connection = datasource.getConnection()) {
            return new ShutInYears(connection).ofHomes(homes);
        } catch (SQLException cause) {
            throw new IllegalStateException("when the homes are shut could not be read", cause);
        }
    }

    /**
     * @param words what the household is told for each act
     * @param today what was due before it stays
     */
    public void countFrom(
            Owing owing, Cadence cadence, Last last, Map<Due.Act, Wording> words, SeasonRules rules, LocalDate today) {
        if (!cadence.countsFromLastTime()) {
            return;
        }
        of(DONE_WITH_IT, owing)
                .setParameter("last", last.day())
                .setParameter("by", last.by())
                .setParameter("month", last.day().minusMonths(1))
                .executeUpdate();
        lay(owing, cadence, last.day(), words, rules, today);
    }

    /** Nobody knows when it was last done: what was decided counts from the first day of the agreement here. */
    public void countFromTheFirstDay(
            Owing owing, Cadence cadence, Map<Due.Act, Wording> words, SeasonRules rules, LocalDate today) {
        if (cadence.countsFromLastTime()) {
            lay(owing, cadence, owing.begins(), words, rules, today);
        }
    }

    private void lay(
            Owing owing,
            Cadence cadence,
            LocalDate from,
            Map<Due.Act, Wording> words,
            SeasonRules rules,
            LocalDate today) {
        Term rest = PromisesLeft.rest(owing.term(), today);
        rows.flush();
        store(
                owing,
                cadence.duesIn(rest, History.doneOn(from), rules).stream()
                        .filter(due -> rest.contains(due.on()))
                        .map(due -> OpenDays.of(due, owing.shut()))
                        .toList(),
                words,
                rest.from());
    }

    /** What is left of the list as it was sold, where nobody knows any more when it was last done in the term. */
    public void asSold(Owing owing, Map<Due.Act, Wording> words, SeasonRules rules, LocalDate today) {
        LocalDate from = PromisesLeft.rest(owing.term(), today).from();
        rows.flush();
        LocalDate last = lastDone(owing);
        store(
                owing,
                owing.sold().duesIn(owing.term(), last == null ? History.NONE : History.doneOn(last), rules).stream()
                        .filter(due -> owing.term().contains(due.on()))
                        .map(due -> OpenDays.of(due, owing.shut()))
                        .filter(due -> !due.on().isBefore(from))
                        .toList(),
                words,
                from);
    }

    private @Nullable LocalDate lastDone(Owing owing) {
        return (LocalDate) rows.createNativeQuery("""
                        select max(day) from unit_history
                         where tenant_id = current_tenant() and equipment_id = :unit and task_code = :task""", LocalDate.class)
                .setParameter("unit", owing.unit())
                .setParameter("task", owing.taskCode())
                .getSingleResult();
    }

    private Query of(String sql, Owing owing) {
        return rows.createNativeQuery(sql)
                .setParameter("agreement", owing.agreementId())
                .setParameter("unit", owing.unit())
                .setParameter("task", owing.taskCode());
    }

    private void store(Owing owing, List<Due> dues, Map<Due.Act, Wording> words, LocalDate from) {
        Wording unknown = new Wording(owing.taskCode(), owing.taskCode());
        List<Wording> said =
                dues.stream().map(due -> words.getOrDefault(due.act(), unknown)).toList();
        try (var connection = datasource.getConnection();
                var lay = connection.prepareStatement(LAID_AGAIN)) {
            int at = 0;
            lay.setArray(
                    ++at,
                    dates(connection, dues.stream().map(due -> due.window().from())));
            lay.setArray(++at, dates(connection, dues.stream().map(Due::on)));
            lay.setArray(
                    ++at,
                    texts(connection, dues.stream().map(due -> due.act().name().toLowerCase(Locale.ROOT))));
            lay.setArray(++at, texts(connection, said.stream().map(Wording::en)));
            lay.setArray(++at, texts(connection, said.stream().map(Wording::fr)));
            lay.setObject(++at, owing.agreementId());
            lay.setObject(++at, owing.unit());
            lay.setString(++at, owing.taskCode());
            lay.setObject(++at, from);
            lay.setObject(++at, owing.homeId());
            lay.setObject(++at, owing.agreementId());
            lay.setObject(++at, owing.unit());
            lay.setString(++at, owing.taskCode());
            lay.executeUpdate();
        } catch (SQLException cause) {
            throw new IllegalStateException("the household's tasks could not be laid again", cause);
        }
    }

    private static Array dates(Connection connection, Stream<LocalDate> days) throws SQLException {
        return connection.createArrayOf("date", days.map(LocalDate::toString).toArray());
    }

    private static Array texts(Connection connection, Stream<String> texts) throws SQLException {
        return connection.createArrayOf("text", texts.toArray());
    }
}
