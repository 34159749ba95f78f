package changeover.billing.documents.band;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a year band says in words, in English and in the French of Quebec. */
public record BandWords(DayWords days) {

    private static final List<String> ENGLISH_NUMBERS = List.of(
            "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve");
    private static final List<String> FRENCH_NUMBERS = List.of(
            "aucune", "une", "deux", "trois", "quatre", "cinq", "six", "sept", "huit", "neuf", "dix", "onze", "douze");

    public static BandWords of(Locale locale) {
        return new BandWords(DayWords.of(locale));
    }

    /** "Today, 7 Oct" */
    public String today(LocalDate day) {
        return say("Today, ", "Aujourd’hui, ") + days.brief(day);
    }

    /** "The year, 1 April 2026 to 31 March 2027" */
    public String title(LocalDate first, LocalDate last) {
        return say("The year, ", "L’année, ") + days.full(first) + say(" to ", " au ") + days.full(last);
    }

    public String fromTo(LocalDate first, LocalDate last) {
        return days.brief(first) + say(" to ", " au ") + days.brief(last);
    }

    public String turn(boolean cooling) {
        return cooling
                ? say("turn to cooling", "passage à la climatisation")
                : say("turn to heating", "passage au chauffage");
    }

    String kept() {
        return say("Kept", "Tenu");
    }

    String keptLate(long daysPast) {
        return say(
                "Kept, " + count(daysPast) + " past the last day",
                "Tenu, " + count(daysPast) + " après le dernier jour");
    }

    String late(long daysLate) {
        return say("Late by " + count(daysLate), "En retard de " + count(daysLate));
    }

    String lateWithVisit(long daysLate, long visitPast) {
        return late(daysLate)
                + say(
                        ", visit comes " + count(visitPast) + " past",
                        ", la visite vient " + count(visitPast) + " après");
    }

    String willBeLate(long visitPast) {
        return say("Visit comes " + count(visitPast) + " past", "La visite vient " + count(visitPast) + " après");
    }

    String noDay() {
        return say("No day yet", "Pas encore de jour");
    }

    String moving() {
        return say("Asked to move", "À déplacer, demandé");
    }

    String keptIfDayHolds() {
        return say("Kept if the day holds", "Tenu si le jour tient");
    }

    /** "Twelve promises: six kept, one late, five with a day; next visit 15 October." */
    String summary(int all, long kept, long late, long withDay, Optional<LocalDate> next) {
        List<String> counts = new ArrayList<>();
        add(counts, kept, say("kept", kept > 1 ? "tenues" : "tenue"));
        add(counts, late, say("late", "en retard"));
        add(counts, withDay, say("with a day", "avec un jour"));
        add(counts, all - kept - late - withDay, say("without a day", "sans jour"));
        String start =
                capital(number(all)) + say(all == 1 ? " promise" : " promises", all > 1 ? " promesses" : " promesse");
        String middle = counts.isEmpty() ? "" : say(": ", "\u00a0: ") + String.join(", ", counts);
        String end = next.map(day -> say("; next visit ", "; prochaine visite le ") + days.plain(day))
                .orElse("");
        return start + middle + end + ".";
    }

    private void add(List<String> counts, long count, String words) {
        if (count > 0) {
            counts.add(number(count) + " " + words);
        }
    }

    private String number(long count) {
        List<String> numbers = days.french() ? FRENCH_NUMBERS : ENGLISH_NUMBERS;
        return count < numbers.size() ? numbers.get((int) count) : String.valueOf(count);
    }

    private String count(long number) {
        return number + "\u00a0" + say(number == 1 ? "day" : "days", number > 1 ? "jours" : "jour");
    }

    private String say(String english, String french) {
        return days.french() ? french : english;
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
