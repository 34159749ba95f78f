package changeover.contracts.agreements;

import changeover.contracts.calendar.Term;
import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The agreements of the current business as lists: one statement each. */
@ApplicationScoped
public class AgreementLists {

    /** How an agreement stands, in the words of {@link AgreementState}. */
    private static final String STATE = """
            case when y.id is null then case when a.valid_until < :day then 'lapsed' else 'offered' end
              when e.day <= :day then 'ended' when a.term_until <= :day then 'over'
              when a.term_from > :day then 'accepted' else 'in_force' end
            """;

    private static final String FROM = """
            from agreement a
            left join agreement_acceptance y on y.tenant_id = a.tenant_id and y.agreement_id = a.id
            left join agreement_ending e on e.tenant_id = a.tenant_id and e.agreement_id = a.id
            """;

    @Inject
    EntityManager rows;

    /**
     * The newest first.
     *
     * @param state null for all
     */
    @SuppressWarnings("unchecked")
    public List<AgreementRow> page(@Nullable AgreementState state, LocalDate day, int from, int count) {
        Query ask = rows.createNativeQuery(
                        "select * from (select a.id, a.number, a.home_id, a.signer_id, a.plan_name_en, a.plan_name_fr,"
                                + " a.term_from, a.term_until, a.price_minor, a.currency, c.name as signer,"
                                + " concat_ws(', ', h.street, h.unit_label, h.city) as home, " + STATE + " as state "
                                + FROM
                                + " join home h on h.tenant_id = a.tenant_id and h.id = a.home_id"
                                + " join customer c on c.tenant_id = a.tenant_id and c.id = a.signer_id) l"
                                + (state == null ? "" : " where state = :state")
                                + " order by number desc",
                        Tuple.class)
                .setParameter("day", day)
                .setFirstResult(from)
                .setMaxResults(count);
        if (state != null) {
            ask.setParameter("state", state.code());
        }
        List<Tuple> found = ask.getResultList();
        return found.stream().map(AgreementLists::row).toList();
    }

    private static AgreementRow row(Tuple row) {
        return new AgreementRow(
                row.get("id", UUID.class),
                row.get("number", Integer.class),
                row.get("home_id", UUID.class),
                row.get("home", String.class),
                row.get("signer_id", UUID.class),
                row.get("signer", String.class),
                new Wording(row.get("plan_name_en", String.class), row.get("plan_name_fr", String.class)),
                new Term(row.get("term_from", LocalDate.class), row.get("term_until", LocalDate.class)),
                Money.ofMinor(row.get("price_minor", Long.class), row.get("currency", String.class)),
                state(row.get("state", String.class)));
    }

    /** How many stand how; a state that none has is missing. */
    @SuppressWarnings("unchecked")
    public Map<AgreementState, Integer> counts(LocalDate day) {
        List<Tuple> found = rows.createNativeQuery(
                        "select " + STATE + " as state, count(*) as agreements " + FROM + " group by 1", Tuple.class)
                .setParameter("day", day)
                .getResultList();
        var counts = new EnumMap<AgreementState, Integer>(AgreementState.class);
        found.forEach(row -> counts.put(
                state(row.get("state", String.class)),
                row.get("agreements", Long.class).intValue()));
        return counts;
    }

    private static AgreementState state(String code) {
        return AgreementState.valueOf(code.toUpperCase(Locale.ROOT));
    }
}
