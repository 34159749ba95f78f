package changeover.scheduling.closeout;

import changeover.contracts.catalogue.FindingLevel;
import changeover.contracts.catalogue.Standing;
import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Everything that the service report of a closed visit prints, in both languages.
 *
 * @param version 1, or one more for each amendment
 * @param arrived by the business's clock; null when nobody said
 * @param note for the household, in the technician's words
 * @param correction the last amendment; null on the first version
 * @param household what the household does itself until the next visit, by day
 * @param next the next visit of the home; null when none is planned
 * @param cautions codes of the cautions that the visit's tasks call for
 */
public record ReportFacts(
        UUID visitId,
        UUID homeId,
        int version,
        String visitKind,
        LocalDate day,
        @Nullable LocalTime arrived,
        @Nullable LocalTime left,
        int minutes,
        Technician technician,
        @Nullable String receivedBy,
        @Nullable String nobodyWhy,
        @Nullable String note,
        @Nullable Correction correction,
        List<TaskFact> tasks,
        List<ReadingFact> readings,
        List<FindingFact> findings,
        List<PartFact> parts,
        List<HouseholdFact> household,
        @Nullable NextVisit next,
        List<String> cautions) {

    /** @param tickets kind and number of each licence card that held on the day */
    public record Technician(UUID personId, String name, List<TicketFact> tickets) {}

    public record TicketFact(String kind, @Nullable String number) {}

    public record Correction(int version, Instant at, String by, String why) {}

    public record TaskFact(
            UUID id,
            @Nullable UUID equipmentId,
            @Nullable String equipment,
            String code,
            Wording wording,
            Outcome outcome,
            @Nullable String reason) {}

    /**
     * @param value in the base unit {@code unit}; null for yes or no, words and days
     * @param low lower end of the band in that unit
     * @param entered as typed, in {@code enteredUnit}
     * @param beyond what to do; null unless it is to be acted on
     */
    public record ReadingFact(
            UUID id,
            @Nullable UUID equipmentId,
            @Nullable String equipment,
            String code,
            Wording wording,
            @Nullable String running,
            String entered,
            @Nullable String enteredUnit,
            @Nullable BigDecimal value,
            @Nullable String unit,
            @Nullable BigDecimal low,
            @Nullable BigDecimal high,
            @Nullable BigDecimal volts,
            Standing standing,
            boolean actOn,
            @Nullable Wording beyond,
            @Nullable Last last) {}

    /** The same reading of the same machine at the visit before. */
    public record Last(
            LocalDate day, String entered, @Nullable String enteredUnit) {}

    /**
     * @param sentence in both languages; null when it was said in free words
     * @param text free words in {@code language}; null when a sentence was chosen
     * @param next visit, estimate, refused; null for nothing
     */
    public record FindingFact(
            UUID id,
            @Nullable UUID equipmentId,
            @Nullable String equipment,
            FindingLevel level,
            @Nullable Wording sentence,
            @Nullable String text,
            @Nullable String language,
            @Nullable String toldTo,
            @Nullable Boolean agreed,
            @Nullable String next,
            @Nullable LocalDate clearedOn,
            List<PhotoFact> photos) {

        /** In the reader's language where it can be. */
        public String in(String readersLanguage) {
            return sentence != null ? sentence.in(readersLanguage) : text == null ? "" : text;
        }
    }

    /** @param there whether its bytes have come */
    public record PhotoFact(
            UUID id, String sha256, @Nullable String caption, boolean there) {}

    public record PartFact(
            String code,
            Wording name,
            String unit,
            BigDecimal quantity,
            @Nullable UUID equipmentId,
            @Nullable String equipment,
            String why) {}

    public record HouseholdFact(
            LocalDate dueOn, Wording wording, @Nullable String equipment) {}

    /** @param day and {@code starts} are null while it has no day; then its window stands for it */
    public record NextVisit(
            UUID visitId,
            LocalDate windowFrom,
            LocalDate windowLast,
            @Nullable LocalDate day,
            @Nullable LocalTime starts) {}
}
