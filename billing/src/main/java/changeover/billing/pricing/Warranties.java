package changeover.billing.pricing;

import changeover.billing.pricing.Warranty.By;
import changeover.contracts.words.Wording;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * The maker is asked first, for the machine and for the part; then we ourselves, for what we fitted; then the law, for the machine.
 * A plan's part and one that the customer asked for are asked of nobody. A warranty holds through its last day, and months end on the
 * day before the same day of their last month.
 */
public final class Warranties {

    private Warranties() {}

    /** @param day on which the part was used */
    public static Warranty of(WarrantyFacts facts, LocalDate day) {
        if (!facts.why().equals("repair") && !facts.why().equals("warranty")) {
            return Warranty.NONE;
        }
        LocalDate maker = facts.makerUntil();
        WarrantyFacts.Fitted fitted = facts.fitted();
        LocalDate part = fitted == null ? null : last(fitted.day(), fitted.makersMonths());
        if (maker != null && holds(maker, day)) {
            return new Warranty(By.MAKER, machine(maker, facts.registration()));
        }
        if (part != null && holds(part, day)) {
            return new Warranty(
                    By.MAKER,
                    until("under the part’s own maker’s warranty", "sous la garantie du fabricant de la pièce", part));
        }
        LocalDate ours = fitted == null ? null : last(fitted.day(), fitted.ourMonths());
        if (fitted != null && ours != null && holds(ours, day)) {
            return new Warranty(By.US, ours(fitted.day(), ours));
        }
        WarrantyFacts.Law law = facts.law();
        LocalDate legal = law == null ? null : last(law.installed(), law.months());
        if (law != null && legal != null && holds(legal, day)) {
            return new Warranty(By.LAW, law(law.source(), legal));
        }
        if (facts.why().equals("warranty") && maker == null && part == null) {
            return Warranty.SAID;
        }
        return maker == null ? Warranty.NONE : new Warranty(By.NOBODY, ended(maker));
    }

    /** The last day of so many months; null for none. */
    private static @Nullable LocalDate last(LocalDate from, int months) {
        return months == 0 ? null : from.plusMonths(months).minusDays(1);
    }

    private static boolean holds(LocalDate last, LocalDate day) {
        return !last.isBefore(day);
    }

    private static Wording machine(LocalDate last, @Nullable String registration) {
        return registration == null || registration.isBlank()
                ? until("under the maker’s warranty", "sous la garantie du fabricant", last)
                : until(
                        "under the maker’s warranty (registration " + registration + ")",
                        "sous la garantie du fabricant (enregistrement " + registration + ")",
                        last);
    }

    private static Wording ours(LocalDate fitted, LocalDate last) {
        return until(
                "we fitted this part on " + english(fitted) + " and answer for it",
                "nous avons posé cette pièce le " + french(fitted) + " et en répondons",
                last);
    }

    private static Wording law(String source, LocalDate last) {
        return until(
                "under the warranty that the law gives (" + source + ")",
                "sous la garantie que donne la loi (" + source + ")",
                last);
    }

    private static Wording until(String en, String fr, LocalDate last) {
        return new Wording(
                "No charge: " + en + ", until " + english(last) + ".",
                "Sans frais : " + fr + ", jusqu’au " + french(last) + ".");
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
