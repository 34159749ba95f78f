package changeover.billing.warranties;

import changeover.contracts.words.Wording;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** What is known of a place's law and was not read at its source: it is said where the owner writes the months, and counts for nothing. */
public record LegalNote(String place, LocalDate from, Wording words, String source) {

    private static final List<LegalNote> ALL = read();

    public static List<LegalNote> of(String place) {
        return ALL.stream().filter(note -> note.place.equals(place)).toList();
    }

    private static List<LegalNote> read() {
        try (InputStream file = LegalNote.class.getResourceAsStream("/changeover/billing/legal-warranties.json")) {
            List<LegalNote> notes = new ArrayList<>();
            for (JsonNode row :
                    new ObjectMapper().readTree(Objects.requireNonNull(file)).get("rows")) {
                notes.add(new LegalNote(
                        row.get("place").asText(),
                        LocalDate.parse(row.get("from").asText()),
                        new Wording(row.get("en").asText(), row.get("fr").asText()),
                        row.get("source").asText()));
            }
            return List.copyOf(notes);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
