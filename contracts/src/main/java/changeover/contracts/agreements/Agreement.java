package changeover.contracts.agreements;

import changeover.contracts.calendar.DayInWords;
import changeover.contracts.calendar.Term;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Owned;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Wording;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What one home was promised for a term, at a price, in the words and figures of the day it was offered. It is accepted
 * by a yes, ended by a row, and renewed by another agreement.
 */
@Entity
@Table(name = "agreement")
public class Agreement extends Owned {

    @Column(updatable = false)
    private int number;

    @Column(name = "home_id", updatable = false)
    private UUID homeId = new UUID(0, 0);

    @Column(name = "signer_id")
    private UUID signerId = new UUID(0, 0);

    @Column(name = "payer_id")
    private UUID payerId = new UUID(0, 0);

    @Column(name = "plan_id", updatable = false)
    private UUID planId = new UUID(0, 0);

    @Column(name = "plan_code", updatable = false)
    private String planCode = "";

    @Column(name = "plan_name_en", updatable = false)
    private String planNameEn = "";

    @Column(name = "plan_name_fr", updatable = false)
    private String planNameFr = "";

    @Column(name = "term_from")
    private LocalDate termFrom = LocalDate.EPOCH;

    @Column(name = "term_until")
    private LocalDate termUntil = LocalDate.EPOCH;

    @Column(name = "price_minor", updatable = false)
    private long priceMinor;

    @Column(updatable = false)
    private String currency = "CAD";

    @Column(updatable = false)
    private int instalments = 1;

    @Column(updatable = false)
    private int visits;

    @Column(name = "discount_percent", updatable = false)
    private BigDecimal discountPercent = BigDecimal.ZERO;

    @Column(name = "included_minutes", updatable = false)
    private int includedMinutes;

    @Column(name = "covers_repairs", updatable = false)
    private boolean coversRepairs;

    @Column(updatable = false)
    private String language = "en";

    @Column(name = "offered_on", updatable = false)
    private LocalDate offeredOn = LocalDate.EPOCH;

    @Column(name = "valid_until")
    private LocalDate validUntil = LocalDate.EPOCH;

    @Column(name = "renews_id", updatable = false)
    private @Nullable UUID renewsId;

    @Version
    private int version;

    /** For Hibernate: agreements are written many at a time, by {@link OfferRows}. */
    protected Agreement() {}

    /**
     * The customer says yes. A yes after the first day moves the term: nothing was promised before it.
     *
     * @param place of the home, {@code CA-QC}
     */
    Acceptance accept(Yes yes, String place) {
        refusal(yes, place).ifPresent(refusal -> {
            throw refusal.thrown();
        });
        if (yes.day().isAfter(termFrom)) {
            Term moved = Term.ofMonths(yes.day(), term().months());
            termFrom = moved.from();
            termUntil = moved.until();
        }
        return Acceptance.of(id(), yes);
    }

    /** Why this yes does not count; empty when it does. */
    Optional<Refusal> refusal(Yes yes, String place) {
        if (yes.byName().isBlank()) {
            return Optional.of(Refusal.of("agreement.who-said-yes").at("byName"));
        }
        if (yes.day().isBefore(offeredOn)) {
            return Optional.of(Refusal.of("agreement.yes-before-offer").at("day"));
        }
        if (yes.day().isAfter(validUntil)) {
            return Optional.of(Refusal.of("agreement.offer-lapsed", Map.of("day", DayInWords.of(validUntil)))
                    .at("day"));
        }
        return SaleRules.refusal(place, yes.channel(), yes.day());
    }

    AgreementSold.Sold sold(Yes yes) {
        return new AgreementSold.Sold(
                id(),
                homeId,
                payerId,
                termFrom,
                termUntil,
                price(),
                instalments,
                yes.day(),
                yes.channel(),
                yes.paidByCard(),
                language);
    }

    /** It ends before its term is over: from this day on nothing is promised any more. */
    Ending end(LocalDate day, @Nullable EndingCause cause, String why) {
        if (why.isBlank()) {
            throw Refusal.of("agreement.ending-says-why").at("why").thrown();
        }
        if (day.isBefore(offeredOn) || !day.isBefore(termUntil)) {
            throw Refusal.of("agreement.ending-in-term", Map.of("day", DayInWords.of(term().last())))
                    .at("day")
                    .thrown();
        }
        return Ending.of(id(), day, cause, why.strip());
    }

    /** Why the agreement ends whose place this one takes. */
    Wording changed() {
        return new Wording(
                "Changed to " + planNameEn + ", no. " + number, "Changé pour " + planNameFr + ", nº\u00a0" + number);
    }

    /** The number that people say: one a business, without meaning. */
    public int number() {
        return number;
    }

    public UUID homeId() {
        return homeId;
    }

    public UUID signerId() {
        return signerId;
    }

    public UUID payerId() {
        return payerId;
    }

    public UUID planId() {
        return planId;
    }

    public String planCode() {
        return planCode;
    }

    /** The plan's name as it was when it was offered. */
    public Wording planName() {
        return new Wording(planNameEn, planNameFr);
    }

    public Term term() {
        return new Term(termFrom, termUntil);
    }

    /** Of the term, before tax. */
    public Money price() {
        return Money.ofMinor(priceMinor, currency);
    }

    public Currency currency() {
        return Currency.getInstance(currency);
    }

    public int instalments() {
        return instalments;
    }

    public int visits() {
        return visits;
    }

    /** Percent off parts and labour that the plan does not include. */
    public BigDecimal discountPercent() {
        return discountPercent;
    }

    public int includedMinutes() {
        return includedMinutes;
    }

    public boolean coversRepairs() {
        return coversRepairs;
    }

    public String language() {
        return language;
    }

    public LocalDate offeredOn() {
        return offeredOn;
    }

    /** Last day on which a yes counts. */
    public LocalDate validUntil() {
        return validUntil;
    }

    public Optional<UUID> renewsId() {
        return Optional.ofNullable(renewsId);
    }

    public int version() {
        return version;
    }
}
