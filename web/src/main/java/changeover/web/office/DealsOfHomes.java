package changeover.web.office;

import changeover.contracts.agreements.Acceptance;
import changeover.contracts.agreements.Agreement;
import changeover.contracts.agreements.AgreementState;
import changeover.contracts.agreements.Agreements;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** The agreement that counts for a home: the one in force, else the one to begin, else the offer, else the last one. */
@ApplicationScoped
public class DealsOfHomes {

    private static final List<AgreementState> BEFORE_OTHERS = List.of(
            AgreementState.IN_FORCE,
            AgreementState.ACCEPTED,
            AgreementState.OFFERED,
            AgreementState.OVER,
            AgreementState.ENDED);

    /** Only the latest terms are looked at: an older one cannot count. */
    private static final int LATEST = 3;

    @Inject
    Agreements agreements;

    Optional<HouseCard.Deal> of(UUID home, LocalDate day) {
        record Standing(Agreement agreement, AgreementState state) {}
        return agreements.of(home).stream()
                .sorted(Comparator.comparing((Agreement one) -> one.term().from())
                        .reversed())
                .limit(LATEST)
                .map(one -> new Standing(one, agreements.state(one, day)))
                .filter(one -> BEFORE_OTHERS.contains(one.state()))
                .min(Comparator.comparingInt(one -> BEFORE_OTHERS.indexOf(one.state())))
                .map(one -> deal(one.agreement(), one.state()));
    }

    private HouseCard.Deal deal(Agreement agreement, AgreementState state) {
        return new HouseCard.Deal(
                agreement.id(),
                agreement.number(),
                agreement.planName(),
                agreement.term().from(),
                agreement.term().last(),
                state.code(),
                agreements.acceptance(agreement.id()).map(Acceptance::day).orElse(null));
    }
}
