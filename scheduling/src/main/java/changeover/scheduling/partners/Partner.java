package changeover.scheduling.partners;

import changeover.contracts.calendar.DayInWords;
import changeover.contracts.words.Refusal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A partner goes to a home for us while a licence of theirs is written down and every paper of theirs holds on that day.
 *
 * @param trade electrical, gas, plumbing, refrigeration or other
 * @param papers those that were not put away
 */
public record Partner(
        UUID id,
        String name,
        String trade,
        @Nullable String phone,
        @Nullable String email,
        List<PartnerPaper> papers) {

    public static final List<String> TRADES = List.of("electrical", "gas", "plumbing", "refrigeration", "other");

    private static final Map<String, String> TICKETS =
            Map.of("electrical", "electrical", "gas", "gas", "refrigeration", "refrigerant");

    public Partner {
        papers = List.copyOf(papers);
    }

    /** The ticket that a trade's licence stands for: refrigerant, gas or electrical; empty for none. */
    public static Optional<String> ticketOf(String trade) {
        return Optional.ofNullable(TICKETS.get(trade));
    }

    /** Why they may not go on that day; empty where they may. */
    public Optional<Refusal> refusal(LocalDate day) {
        if (papers.stream().noneMatch(paper -> paper.kind().equals(PartnerPaper.LICENCE))) {
            return Optional.of(
                    Refusal.of("partner.no-licence", Map.of("partner", name)).at("partner"));
        }
        return papers.stream()
                .filter(paper -> paper.isOver(day))
                .findFirst()
                .map(paper -> over(paper.kind(), Map.of("partner", name, "day", DayInWords.of(paper.expiresOn())))
                        .at("partner"));
    }

    private static Refusal over(String kind, Map<String, Object> facts) {
        return switch (kind) {
            case PartnerPaper.LICENCE -> Refusal.of("partner.licence-is-over", facts);
            case "insurance" -> Refusal.of("partner.insurance-is-over", facts);
            default -> Refusal.of("partner.paper-is-over", facts);
        };
    }
}
