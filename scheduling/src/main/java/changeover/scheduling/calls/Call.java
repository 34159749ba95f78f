package changeover.scheduling.calls;

import changeover.contracts.money.Money;
import changeover.contracts.tenants.OwnedWithGivenId;
import changeover.contracts.words.Checks;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.hibernate.annotations.Immutable;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;

/** Somebody rang about a home. What was said then is written once and never taken away. */
@Entity
@Immutable
@Table(name = "call")
public class Call extends OwnedWithGivenId {

    @Column(name = "home_id")
    private UUID homeId = new UUID(0, 0);

    @Column(name = "agreement_id")
    private @Nullable UUID agreementId;

    private String caller = "";
    private @Nullable String phone;

    @Column(name = "rang_at")
    private Instant rangAt = Instant.EPOCH;

    private String trouble = "";
    private String words = "";
    private String heat = "";

    @JdbcTypeCode(SqlTypes.ARRAY)
    private List<String> risks = List.of();

    @Column(name = "told_to_leave")
    private boolean toldToLeave;

    @Column(name = "promised_by")
    private Instant promisedBy = Instant.EPOCH;

    @Column(name = "told_minor")
    private @Nullable Long toldMinor;

    private @Nullable String currency;

    @Column(name = "told_words")
    private @Nullable String toldWords;

    protected Call() {}

    private Call(UUID id) {
        super(id);
    }

    /**
     * What was said on the telephone.
     *
     * @param caller who rang, by name
     * @param words what is wrong, as the caller says it
     * @param toldToLeave whether they were told to leave and to call the emergency number
     * @param promisedBy when we shall be there at the latest; null for the business's own answer time
     * @param told what it was said to cost; null when nothing was said
     * @param toldWords how that was said: "an hour and the trip, parts beside"
     */
    public record Facts(
            UUID homeId,
            String caller,
            @Nullable String phone,
            Instant rangAt,
            Trouble trouble,
            String words,
            Heat heat,
            Set<Risk> risks,
            boolean toldToLeave,
            @Nullable Instant promisedBy,
            @Nullable Money told,
            @Nullable String toldWords) {

        public Facts {
            risks = Set.copyOf(risks);
        }

        /** The same words about a home that was only entered now. */
        public Facts at(UUID where) {
            return new Facts(
                    where,
                    caller,
                    phone,
                    rangAt,
                    trouble,
                    words,
                    heat,
                    risks,
                    toldToLeave,
                    promisedBy,
                    told,
                    toldWords);
        }

        /** The same words, said at another hour. */
        Facts rangAt(Instant hour) {
            return new Facts(
                    homeId, caller, phone, hour, trouble, words, heat, risks, toldToLeave, promisedBy, told, toldWords);
        }

        public Urgency urgency() {
            return Urgency.of(trouble, heat, risks);
        }
    }

    /** @param agreementId in force at the home when they rang; null without a plan */
    static Call taken(UUID id, Facts facts, @Nullable UUID agreementId, Instant promisedBy) {
        var checks = new Checks();
        var call = new Call(id);
        call.homeId = facts.homeId();
        call.agreementId = agreementId;
        call.caller = checks.line("caller", facts.caller());
        call.phone = checks.phone("phone", facts.phone());
        call.rangAt = facts.rangAt();
        call.trouble = facts.trouble().code();
        String said = checks.note("words", facts.words());
        checks.refuseIf(said == null, "words", "text.missing");
        call.words = said == null ? "" : said;
        call.heat = facts.heat().code();
        Set<Risk> all = Risk.of(facts.trouble(), facts.risks());
        call.risks = all.stream().map(Risk::code).toList();
        call.toldToLeave = facts.toldToLeave();
        checks.refuseIf(!facts.toldToLeave() && all.stream().anyMatch(Risk::isLife), "told", "call.life-first");
        call.promisedBy = promisedBy;
        checks.refuseIf(promisedBy.isBefore(facts.rangAt()), "promiseDay", "call.promise-before-ring");
        Money told = facts.told();
        call.toldMinor = told == null ? null : told.minor();
        call.currency = told == null ? null : told.currency().getCurrencyCode();
        call.toldWords = checks.note("toldWords", facts.toldWords());
        checks.orRefuse();
        return call;
    }

    public Facts facts() {
        return new Facts(
                homeId,
                caller,
                phone,
                rangAt,
                Trouble.ofCode(trouble),
                words,
                Heat.ofCode(heat),
                risks.stream().map(Risk::ofCode).collect(Collectors.toSet()),
                toldToLeave,
                promisedBy,
                toldMinor == null || currency == null ? null : Money.ofMinor(toldMinor, currency),
                toldWords);
    }

    public UUID homeId() {
        return homeId;
    }

    /** The agreement in force at the home when they rang. */
    public Optional<UUID> agreementId() {
        return Optional.ofNullable(agreementId);
    }

    public Instant promisedBy() {
        return promisedBy;
    }
}
