package changeover.scheduling.calls;

import changeover.contracts.money.Money;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What was written down of a call, and what was put right of it: each version whole, none ever taken away. */
@ApplicationScoped
public class CallVersions {

    /** The newest version of a call {@code c}, as {@code x}; missing where nothing was put right. */
    static final String NEWEST = """
             left join lateral (select * from call_correction r where r.tenant_id = c.tenant_id and r.call_id = c.id
               order by r.id desc limit 1) x on true
            """;

    private static final String CORRECTIONS = """
            select r.caller, r.phone, r.trouble, r.words, r.heat, array_to_string(r.risks, ',') as risks, r.told_to_leave,
                   r.promised_by, r.told_minor, cast(r.currency as text) as currency, r.told_words, r.why, r.at, m.name as by
              from call_correction r
              left join membership m on m.tenant_id = r.tenant_id and m.person_id = r.person_id
             where r.call_id = :call order by r.id
            """;

    private static final String FIRST = """
            select c.made_at as at, m.name as by from call c
              left join membership m on m.tenant_id = c.tenant_id and m.person_id = c.made_by
             where c.id = :call
            """;

    @Inject
    EntityManager rows;

    /** What stands of it now. */
    public Call.Facts newest(Call call) {
        List<CallVersion> corrected = corrections(call);
        return corrected.isEmpty() ? call.facts() : corrected.getLast().facts();
    }

    /** First to last. */
    public List<CallVersion> all(Call call) {
        Tuple first = (Tuple) rows.createNativeQuery(FIRST, Tuple.class)
                .setParameter("call", call.id())
                .getSingleResult();
        List<CallVersion> all = new ArrayList<>();
        all.add(new CallVersion(call.facts(), first.get("by", String.class), first.get("at", Instant.class), null));
        all.addAll(corrections(call));
        return all;
    }

    @SuppressWarnings("unchecked")
    private List<CallVersion> corrections(Call call) {
        List<Tuple> found = rows.createNativeQuery(CORRECTIONS, Tuple.class)
                .setParameter("call", call.id())
                .getResultList();
        return found.stream().map(row -> version(row, call)).toList();
    }

    private static CallVersion version(Tuple row, Call call) {
        @Nullable Long told = row.get("told_minor", Long.class);
        return new CallVersion(
                new Call.Facts(
                        call.homeId(),
                        row.get("caller", String.class),
                        row.get("phone", String.class),
                        call.facts().rangAt(),
                        Trouble.ofCode(row.get("trouble", String.class)),
                        row.get("words", String.class),
                        Heat.ofCode(row.get("heat", String.class)),
                        risks(row.get("risks", String.class)),
                        row.get("told_to_leave", Boolean.class),
                        row.get("promised_by", Instant.class),
                        told == null ? null : Money.ofMinor(told, row.get("currency", String.class)),
                        row.get("told_words", String.class)),
                row.get("by", String.class),
                row.get("at", Instant.class),
                row.get("why", String.class));
    }

    private static Set<Risk> risks(String codes) {
        return Arrays.stream(codes.split(","))
                .filter(code -> !code.isEmpty())
                .map(Risk::ofCode)
                .collect(Collectors.toSet());
    }

    void write(UUID call, Call.Facts facts, String why, UUID by, Instant at) {
        Money told = facts.told();
        Instant promised = Objects.requireNonNull(facts.promisedBy());
        rows.createNativeQuery("""
                        insert into call_correction (call_id, caller, phone, trouble, words, heat, risks, told_to_leave,
                          promised_by, told_minor, currency, told_words, why, person_id, at)
                        values (:call, :caller, cast(:phone as text), :trouble, :words, :heat, string_to_array(:risks, ','), :leave,
                          :promised, cast(:told as bigint), cast(:currency as char(3)), cast(:toldWords as text), :why, :by, :at)""")
                .setParameter("call", call)
                .setParameter("caller", facts.caller())
                .setParameter("phone", facts.phone())
                .setParameter("trouble", facts.trouble().code())
                .setParameter("words", facts.words())
                .setParameter("heat", facts.heat().code())
                .setParameter("risks", facts.risks().stream().map(Risk::code).collect(Collectors.joining(",")))
                .setParameter("leave", facts.toldToLeave())
                .setParameter("promised", promised)
                .setParameter("told", told == null ? null : String.valueOf(told.minor()))
                .setParameter("currency", told == null ? null : told.currency().getCurrencyCode())
                .setParameter("toldWords", facts.toldWords())
                .setParameter("why", why)
                .setParameter("by", by)
                .setParameter("at", at)
                .executeUpdate();
    }
}
