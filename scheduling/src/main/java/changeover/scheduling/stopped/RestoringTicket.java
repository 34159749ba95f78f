package changeover.scheduling.stopped;

import changeover.contracts.words.Wording;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Which ticket may put a machine back: the one that was said, else the one that what was seen asks for, else the one that its
 * kind asks for, else electrical.
 */
public record RestoringTicket(List<String> sentences, List<String> kinds, String ticket) {

    private static final Map<String, Wording> WORDINGS = Map.of(
            "refrigerant", new Wording("refrigerant", "de frigoriste"),
            "gas", new Wording("gas", "de gaz"),
            "electrical", new Wording("electrical", "d’électricité"));

    public static final Set<String> TICKETS = WORDINGS.keySet();

    private static final List<RestoringTicket> ROWS = StopTable.read("tickets", RestoringTicket::row);
    private static final String OTHERWISE = "electrical";

    public RestoringTicket {
        sentences = List.copyOf(sentences);
        kinds = List.copyOf(kinds);
    }

    /**
     * @param said by whoever stopped it, or asked by the task; null where nobody said
     * @param sentence code of what was seen; null for own words
     * @param kind code of the machine's kind; null without a machine
     */
    public static String of(@Nullable String said, @Nullable String sentence, @Nullable String kind) {
        if (said != null && TICKETS.contains(said)) {
            return said;
        }
        return ROWS.stream()
                .filter(row -> sentence != null && row.sentences.contains(sentence))
                .findFirst()
                .or(() -> ROWS.stream()
                        .filter(row -> kind != null && row.kinds.contains(kind))
                        .findFirst())
                .map(RestoringTicket::ticket)
                .orElse(OTHERWISE);
    }

    /** The word for it, before or after "ticket". */
    public static Wording wording(String ticket) {
        return WORDINGS.getOrDefault(ticket, new Wording(ticket, ticket));
    }

    private static RestoringTicket row(JsonNode row) {
        return new RestoringTicket(
                StopTable.words(row, "sentences"),
                StopTable.words(row, "kinds"),
                row.get("ticket").asText());
    }
}
