package changeover.billing.pricing;

import changeover.billing.pricing.Warranty.By;
import changeover.contracts.words.Wording;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The maker is asked first, for the machine and for the part; then we ourselves, for what we fitted; then the law, for the machine.
 * A maker gives the part alone: for its labour and trip we and the law are asked all the same.
 * A plan's part and one that the customer asked for are asked of nobody. A warranty holds through its last day, and months end on the
 * day before the same day of their last month.
 */
public final class Warranties {

    /** Somebody who answers through that day, in the words that stand behind "No charge:". */
    private record Word(By by, Wording words, LocalDate last) {

        Wording why() {
            return new Wording(
                    "No charge: " + words.en() + ", until " + english(last) + ".",
                    "Sans frais : " + words.fr() + ", jusqu’au " + french(last) + ".");
        }

        Wording forLabour() {
            return new Wording(
                    "No charge for labour and trip: " + words.en() + ", until " + english(last) + ".",
                    "Sans frais de main-d’œuvre ni de déplacement : " + words.fr() + ", jusqu’au " + french(last)
                            + ".");
        }

        boolean holds(LocalDate day) {
            return !last.isBefore(day);
        }
    }

    private Warranties() {}

    /** @param day on which the part was used */
    public static Warranty of(WarrantyFacts facts, LocalDate day) {
        if (!facts.why().equals("repair") && !facts.why().equals("warranty")) {
            return facts.why().equals("plan") ? Warranty.OF_THE_PLAN : Warranty.NONE;
        }
        Optional<Word> machine = machine(facts);
        Optional<Word> part = part(facts.fitted());
        Optional<Word> maker = first(machine, part, day);
        Optional<Word> after = first(ours(facts.fitted()), law(facts.law()), day);
        if (maker.isPresent()) {
            return new Warranty(
                    By.MAKER, maker.get().why(), after.map(Word::forLabour).orElse(null));
        }
        if (after.isPresent()) {
            return new Warranty(after.get().by(), after.get().why());
        }
        if (facts.why().equals("warranty") && machine.isEmpty() && part.isEmpty()) {
            return Warranty.SAID;
        }
        return machine.map(word -> new Warranty(By.NOBODY, ended(word.last()))).orElse(Warranty.NONE);
    }

    private static Optional<Word> first(Optional<Word> one, Optional<Word> other, LocalDate day) {
        return one.filter(word -> word.holds(day)).or(() -> other.filter(word -> word.holds(day)));
    }

    private static Optional<Word> machine(WarrantyFacts facts) {
        LocalDate last = facts.makerUntil();
        String registration = facts.registration();
        if (last == null) {
            return Optional.empty();
        }
        return Optional.of(new Word(
                By.MAKER,
                registration == null || registration.isBlank()
                        ? new Wording("under the maker’s warranty", "sous la garantie du fabricant")
                        : new Wording(
                                "under the maker’s warranty (registration " + registration + ")",
                                "sous la garantie du fabricant (enregistrement " + registration + ")"),
                last));
    }

    private static Optional<Word> part(WarrantyFacts.@Nullable Fitted fitted) {
        return fitted == null || fitted.makersMonths() == 0
                ? Optional.empty()
                : Optional.of(new Word(
                        By.MAKER,
                        new Wording(
                                "under the part’s own maker’s warranty", "sous la garantie du fabricant de la pièce"),
                        last(fitted.day(), fitted.makersMonths())));
    }

    private static Optional<Word> ours(WarrantyFacts.@Nullable Fitted fitted) {
        return fitted == null || fitted.ourMonths() == 0
                ? Optional.empty()
                : Optional.of(new Word(
                        By.US,
                        new Wording(
                                "we fitted this part on " + english(fitted.day()) + " and answer for it",
                                "nous avons posé cette pièce le " + french(fitted.day()) + " et en répondons"),
                        last(fitted.day(), fitted.ourMonths())));
    }

    private static Optional<Word> law(WarrantyFacts.@Nullable Law law) {
        return law == null || law.months() == 0
                ? Optional.empty()
                : Optional.of(new Word(
                        By.LAW,
                        new Wording(
                                "under the warranty that the law gives (" + law.source() + ")",
                                "sous la garantie que donne la loi (" + law.source() + ")"),
                        last(law.installed(), law.months())));
    }

    /** The last day of so many months. */
    private static LocalDate last(LocalDate from, int months) {
        return from.plusMonths(months).minusDays(1);
    }

    private static Wording ended(LocalDate last) {
        return new Wording(
                "The maker’s warranty ended on " + english(last) + ".",
                "La garantie du fabricant a pris fin le " + french(last) + ".");
    }

    private static String english(LocalDate day) {
        return DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH).format(day);
    }

    private static String french(LocalDate day) {
        String rest =
                DateTimeFormatter.ofPattern("MMMM yyyy", Locale.CANADA_FRENCH).format(day);
        return (day.getDayOfMonth() == 1 ? "1er" : day.getDayOfMonth()) + " " + rest;
    }
}
