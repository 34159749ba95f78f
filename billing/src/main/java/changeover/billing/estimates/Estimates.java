package changeover.billing.estimates;

import changeover.billing.invoices.Draft;
import changeover.billing.invoices.Most;
import changeover.contracts.customers.Homes;
import changeover.contracts.merging.HomeMerges;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.FilledOn;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refused;
import changeover.scheduling.calls.Calls;
import changeover.scheduling.closeout.FollowUp;
import changeover.scheduling.closeout.FollowUps;
import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.Parts;
import changeover.scheduling.visits.Visits;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;

/** The repair estimates of the business: written and rewritten until they are offered, then read as they stand. */
@ApplicationScoped
public class Estimates {

    private static final String OPEN = """
            a.id is null and (o.id is null or e.valid_until >= ?) order by o.id is null, e.valid_until, e.id""";

    /** The customer said yes, and nobody goes there for it. */
    private static final String TO_DO = """
            a.how = 'accepted' and not exists (select 1 from estimate_work w
              where w.tenant_id = e.tenant_id and w.estimate_id = e.id)""";

    private static final String OVER = "not (a.id is not null and " + TO_DO + """
            ) and (a.id is not null or (o.id is not null and e.valid_until < ?))
            order by coalesce(a.at::date, e.valid_until) desc, e.id desc offset ? limit ?""";

    @Inject
    EntityManager session;

    @Inject
    AgroalDataSource datasource;

    @Inject
    Estimating estimating;

    @Inject
    Homes homes;

    @Inject
    Calls calls;

    @Inject
    Visits visits;

    @Inject
    FollowUps followUps;

    @Inject
    HomeMerges merges;

    @Inject
    Parts parts;

    @Inject
    Today today;

    /** @throws Refused with everything that is wrong with it, or when it names a call, a visit or a need of another home */
    public UUID write(NewEstimate asked) {
        NewEstimate wanted = asked.at(merges.living(asked.homeId()));
        judge(wanted.facts());
        origin(wanted).ifPresent(refusal -> {
            throw refusal.thrown();
        });
        LocalDate day = today.day();
        Draft draft = estimating.foreseen(wanted.homeId(), wanted.facts(), day);
        Most.total(estimating.sum(draft, wanted.homeId(), wanted.facts(), day).total());
        UUID id = inRows(connection -> {
            UUID made = HeadRows.insert(connection, wanted, draft, day);
            ItemRows.write(connection, made, wanted.facts());
            return made;
        });
        if (wanted.followUpId() != null) {
            followUps.end(
                    wanted.followUpId(),
                    wanted.facts().words().lines().findFirst().orElse(""),
                    id);
        }
        return id;
    }

    /** Changes a draft, whole; one that was offered stands. */
    public void rewrite(UUID id, FilledOn filledOn, EstimateFacts facts) {
        judge(facts);
        inRows(connection -> {
            HeadRows.lock(connection, id);
            Estimate draft = HeadRows.draft(connection, id);
            filledOn.mustBe(draft.version());
            Most.total(estimating.sum(draft.homeId(), facts, today.day()).total());
            HeadRows.rewrite(connection, id, facts);
            ItemRows.write(connection, id, facts);
            return id;
        });
    }

    private void judge(EstimateFacts facts) {
        List<Refusal> wrong = facts.refusals(
                today.day(), parts.all().stream().map(KnownPart::code).collect(Collectors.toSet()));
        if (!wrong.isEmpty()) {
            throw new Refused(wrong);
        }
    }

    /** What it is written from is of the same home; of another home, and one that nobody knows, are answered alike. */
    private Optional<Refusal> origin(NewEstimate wanted) {
        UUID home = wanted.homeId();
        if (homes.get(home).isEmpty()) {
            return Optional.of(Refusal.of("call.home-unknown").at("home"));
        }
        if (wanted.callId() != null
                && calls.find(wanted.callId())
                        .filter(call -> merges.living(call.homeId()).equals(home))
                        .isEmpty()) {
            return Optional.of(Refusal.of("deposit.call-elsewhere").at("call"));
        }
        if (wanted.visitId() != null
                && visits.find(wanted.visitId())
                        .filter(visit -> merges.living(visit.homeId()).equals(home))
                        .isEmpty()) {
            return Optional.of(Refusal.of("estimate.visit-elsewhere").at("visit"));
        }
        if (wanted.followUpId() != null
                && followUps
                        .find(wanted.followUpId())
                        .filter(one -> isToBeEstimated(one, wanted))
                        .isEmpty()) {
            return Optional.of(Refusal.of("estimate.nothing-left-there").at("followUp"));
        }
        return Optional.empty();
    }

    private static boolean isToBeEstimated(FollowUp one, NewEstimate wanted) {
        return one.homeId().equals(wanted.homeId())
                && one.kind().equals("estimate")
                && one.visitId().equals(wanted.visitId());
    }

    public Optional<Estimate> find(UUID id) {
        return read("e.id = ?", id).stream().findFirst();
    }

    /** Those that wait for their answer, the first to expire first, then the drafts. */
    public List<Estimate> open() {
        return read(OPEN, today.day());
    }

    /** Those that the customer said yes to and that no visit does yet, the longest waiting first. */
    public List<Estimate> toDo() {
        return read(TO_DO + " order by a.at, e.id");
    }

    /** Answered or expired, the newest first; those that still want a visit stand in {@link #toDo}. */
    public List<Estimate> over(int skip, int count) {
        return read(OVER, today.day(), skip, count);
    }

    /**
     * @param soon of those that wait, with a week or less for it
     * @param toDo said yes to, and without a visit
     */
    public record Counts(int open, int soon, int toDo) {}

    /** How many wait for their answer, and how many for their visit. */
    public Counts counts() {
        LocalDate day = today.day();
        List<Estimate> waiting = open().stream()
                .filter(one -> one.state(day) == EstimateState.OFFERED)
                .toList();
        int soon = (int) waiting.stream().filter(one -> one.expiresSoon(day)).count();
        return new Counts(waiting.size(), soon, toDo().size());
    }

    public List<Estimate> ofHome(UUID home) {
        return read("e.home_id = ? order by e.id desc", home);
    }

    public List<Estimate> ofCustomer(UUID customer) {
        return read("e.customer_id = ? order by e.id desc", customer);
    }

    public List<Estimate> ofCall(UUID call) {
        return read("e.call_id = ? order by e.id desc", call);
    }

    /** Those that were found in the visit, and those whose work it does. */
    public List<Estimate> ofVisit(UUID visit) {
        return read("""
                e.visit_id = ? or exists (select 1 from estimate_work w
                   where w.tenant_id = e.tenant_id and w.estimate_id = e.id and w.visit_id = ?) order by e.id desc""", visit, visit);
    }

    /** What was asked for in it, as it was written. */
    public EstimateFacts facts(Estimate estimate) {
        return inRows(connection -> ItemRows.facts(connection, estimate));
    }

    /** Its lines and taxes: as they were offered, or of a draft as they would be today. */
    public EstimateSum sum(Estimate estimate) {
        return estimate.offer() == null
                ? estimating.sum(estimate.homeId(), facts(estimate), today.day())
                : inRows(connection -> SumRows.read(connection, estimate.id(), estimate.currency()));
    }

    private List<Estimate> read(String where, Object... asked) {
        return inRows(connection -> EstimateRows.read(connection, where, asked));
    }

    interface Work<T> {
        T of(Connection connection) throws SQLException;
    }

    <T> T inRows(Work<T> work) {
        session.flush();
        try (Connection connection = datasource.getConnection()) {
            return work.of(connection);
        } catch (SQLException cause) {
            throw new IllegalStateException("the estimates could not be reached", cause);
        }
    }
}
