package changeover.contracts.agreements;

import changeover.contracts.tenants.ManyRows;
import changeover.contracts.words.Refusal;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The agreements of the current business. */
@ApplicationScoped
public class Agreements {

    @Inject
    EntityManager rows;

    @Inject
    AgroalDataSource datasource;

    @Inject
    AgreementNumbers numbers;

    @Inject
    Event<AgreementSold> sold;

    @Inject
    Event<AgreementEnded> ended;

    /** One yes to one offer. */
    public record Accepting(UUID agreementId, Yes yes) {}

    /** Makes an offer to one home. */
    public Agreement offer(Offer offer) {
        UUID id = offerAll(List.of(offer)).getFirst();
        return find(id).orElseThrow();
    }

    /** Makes offers, as many as the season has; answers their ids in the same order. */
    public List<UUID> offerAll(List<Offer> offers) {
        rows.flush();
        try (var connection = datasource.getConnection()) {
            return OfferRows.store(connection, offers, numbers.take(connection));
        } catch (SQLException cause) {
            throw new IllegalStateException("the offers could not be stored", cause);
        }
    }

    /** A customer says yes: the agreement is sold, and the year's visits and invoices are written with it. */
    public void accept(UUID agreementId, Yes yes) {
        acceptAll(List.of(new Accepting(agreementId, yes)));
    }

    /**
     * Many customers say yes; all of it or nothing.
     *
     * @throws changeover.contracts.words.Refused when one of them does not count
     */
    public void acceptAll(List<Accepting> said) {
        Map<UUID, Agreement> agreements =
                agreements(said.stream().map(Accepting::agreementId).toList());
        Map<UUID, String> places = places(agreements.values());
        var acceptances = ManyRows.into(
                "agreement_acceptance",
                "agreement_id uuid, day date, by_name text, channel text, paid_by_card boolean");
        var facts = new ArrayList<AgreementSold.Sold>();
        for (Accepting accepting : said) {
            Agreement agreement = agreements.get(accepting.agreementId());
            if (agreement == null) {
                throw Refusal.of("agreement.unknown").thrown();
            }
            Yes yes = accepting.yes();
            agreement.accept(yes, places.getOrDefault(agreement.homeId(), ""));
            acceptances.add(
                    agreement.id(),
                    yes.day(),
                    yes.byName().strip(),
                    yes.channel().code(),
                    yes.paidByCard());
            facts.add(agreement.sold(yes));
        }
        rows.flush();
        store(acceptances);
        refuseChanged(agreements);
        endChanged(agreements);
        sold.fire(new AgreementSold(facts));
    }

    /** Whoever changed plan in mid-term has a term that goes on: the next one of the old plan is not sold beside it. */
    private void refuseChanged(Map<UUID, Agreement> accepted) {
        boolean changed = (boolean) rows.createNativeQuery("""
                        select exists (
                          select from agreement a
                            join plan_change c on c.tenant_id = a.tenant_id and c.instead_of_id = a.renews_id
                            join agreement_acceptance y on y.tenant_id = c.tenant_id and y.agreement_id = c.agreement_id
                           where a.id in (:accepted))""")
                .setParameter("accepted", accepted.keySet())
                .getSingleResult();
        if (changed) {
            throw Refusal.of("agreement.renewal-changed").thrown();
        }
    }

    /** What these take the place of ends on their first day, and with it what was still to come, before anything new is laid out. */
    private void endChanged(Map<UUID, Agreement> accepted) {
        String language =
                rows.createQuery("select language from Business", String.class).getSingleResult();
        rows.createNativeQuery("""
                        select c.agreement_id, c.instead_of_id from plan_change c
                         where c.agreement_id in (:accepted) and not exists (
                           select 1 from agreement_ending e
                            where e.tenant_id = c.tenant_id and e.agreement_id = c.instead_of_id)""", Object[].class)
                .setParameter("accepted", accepted.keySet())
                .getResultList()
                .forEach(row -> {
                    Object[] ids = (Object[]) row;
                    Agreement made = Objects.requireNonNull(accepted.get((UUID) ids[0]));
                    Agreement old = find((UUID) ids[1]).orElseThrow();
                    if (made.term().from().isBefore(old.term().until())) {
                        end(old.id(), made.term().from(), made.changed().in(Locale.forLanguageTag(language)));
                    }
                });
    }

    /** An agreement ends before its term is over; what was still to come under it falls away. */
    public void end(UUID agreementId, LocalDate day, String why) {
        end(agreementId, day, null, why);
    }

    /** The same, with the reason that the law of a place may ask for. */
    public void end(UUID agreementId, LocalDate day, @Nullable EndingCause cause, String why) {
        Agreement agreement = find(agreementId).orElseThrow();
        if (acceptance(agreementId).isEmpty()) {
            throw Refusal.of("agreement.not-accepted").thrown();
        }
        rows.persist(agreement.end(day, cause, why));
        rows.flush();
        ended.fire(new AgreementEnded(agreementId, agreement.homeId(), day, why.strip()));
    }

    private void store(ManyRows many) {
        try (var connection = datasource.getConnection()) {
            many.store(connection);
        } catch (SQLException cause) {
            throw new IllegalStateException("the acceptances could not be stored", cause);
        }
    }

    private Map<UUID, Agreement> agreements(List<UUID> ids) {
        return all(ids).stream().collect(Collectors.toMap(Agreement::id, Function.identity()));
    }

    /** Country and region of the homes, as the rules of sale name a place. */
    private Map<UUID, String> places(Collection<Agreement> agreements) {
        var places = new HashMap<UUID, String>();
        rows.createQuery("select id, country, region from Home where id in :homes", Object[].class)
                .setParameter(
                        "homes", agreements.stream().map(Agreement::homeId).toList())
                .getResultStream()
                .forEach(home -> places.put((UUID) home[0], home[1] + "-" + home[2]));
        return places;
    }

    public Optional<Agreement> find(UUID id) {
        return Optional.ofNullable(rows.find(Agreement.class, id));
    }

    public List<Agreement> all(Collection<UUID> ids) {
        return rows.createQuery("from Agreement where id in :ids order by number", Agreement.class)
                .setParameter("ids", ids)
                .getResultList();
    }

    public Optional<Acceptance> acceptance(UUID agreementId) {
        return rows.createQuery("from Acceptance where agreementId = :agreement", Acceptance.class)
                .setParameter("agreement", agreementId)
                .getResultStream()
                .findFirst();
    }

    public Optional<Ending> ending(UUID agreementId) {
        return rows.createQuery("from Ending where agreementId = :agreement", Ending.class)
                .setParameter("agreement", agreementId)
                .getResultStream()
                .findFirst();
    }

    public AgreementState state(Agreement agreement, LocalDate day) {
        return AgreementState.on(
                day,
                agreement.validUntil(),
                acceptance(agreement.id()).map(Acceptance::day).orElse(null),
                ending(agreement.id()).map(Ending::day).orElse(null),
                agreement.term().from(),
                agreement.term().until());
    }

    /** Those of a home, the newest first. */
    public List<Agreement> of(UUID homeId) {
        return rows.createQuery(
                        "from Agreement where homeId = :home order by termFrom desc, number desc", Agreement.class)
                .setParameter("home", homeId)
                .getResultList();
    }
}
