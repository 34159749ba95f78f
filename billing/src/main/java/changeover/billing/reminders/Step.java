package changeover.billing.reminders;

import changeover.contracts.words.Refusal;
import changeover.contracts.words.Wording;
import java.util.ArrayList;
import java.util.List;

/**
 * One step of the ladder: so many days after the day of payment, in these words, with the place's fee or without.
 *
 * @param body may name {documents}, {total} and {days}, which are filled in, and {answer}: by message, or on paper by telephone
 */
public record Step(int daysLate, Tone tone, Wording subject, Wording body, boolean asksFee) {

    static final int MOST_DAYS = 365;

    /** What a business begins with until it writes its own. */
    public static List<Step> usual() {
        return StepWords.USUAL;
    }

    /** Why the step cannot be kept; empty when it can. */
    List<Refusal> wrongs() {
        List<Refusal> wrongs = new ArrayList<>();
        if (daysLate < 1 || daysLate > MOST_DAYS) {
            wrongs.add(Refusal.of("reminder.days").at("days"));
        }
        for (String text : List.of(body.en(), body.fr())) {
            if (!text.contains("{documents}")) {
                wrongs.add(Refusal.of("reminder.no-documents").at(text.equals(body.en()) ? "bodyEn" : "bodyFr"));
            }
        }
        return wrongs;
    }
}
