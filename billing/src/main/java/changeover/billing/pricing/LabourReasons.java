package changeover.billing.pricing;

import changeover.contracts.words.Wording;

/** How minutes became billed hours, in a sentence for the line: always the minutes themselves and the step. */
final class LabourReasons {

    private LabourReasons() {}

    static Wording words(String item) {
        return switch (item) {
            case PriceBook.AFTER_HOURS ->
                new Wording("Labour outside working hours", "Main-d’œuvre hors des heures ouvrables");
            case PriceBook.WEEKEND ->
                new Wording(
                        "Labour on a weekend, outside working hours",
                        "Main-d’œuvre de fin de semaine, hors des heures ouvrables");
            case PriceBook.HOLIDAY ->
                new Wording(
                        "Labour on a holiday, outside working hours",
                        "Main-d’œuvre un jour férié, hors des heures ouvrables");
            default -> Reasons.LABOUR;
        };
    }

    /**
     * @param people whose minutes these are, all together
     * @param given minutes of the visit that the plan gave, which count towards the minimum
     */
    static Wording why(LabourRates.Part part, LabourTerms terms, int people, int given, Wording before) {
        boolean outside = !part.item().equals(PriceBook.HOUR);
        Wording minutes = of(people, minutes(part.minutes(), outside));
        Wording counted = part.asked() > 0
                ? atLeast(minutes, terms, people, given)
                : new Wording(
                        minutes.en() + ", counted up to " + next(terms).en() + ".",
                        minutes.fr() + ", " + (part.minutes() == 1 ? "comptée" : "comptées") + " "
                                + next(terms).fr() + ".");
        return new Wording(counted.en() + " " + before.en(), counted.fr() + " " + before.fr());
    }

    private static Wording of(int people, Wording minutes) {
        return people == 1
                ? minutes
                : new Wording(
                        minutes.en() + " of " + people + " people", minutes.fr() + " de " + people + " personnes");
    }

    private static Wording atLeast(Wording minutes, LabourTerms terms, int people, int given) {
        Wording each = people == 1 ? new Wording("", "") : new Wording(" for each", " pour chacune");
        Wording of = given == 0
                ? new Wording("", "")
                : new Wording(", of which the plan gave " + given, ", dont la formule a donné " + given);
        return new Wording(
                minutes.en() + "; a visit is counted as at least "
                        + minutes(terms.minimum(), false).en() + each.en() + of.en() + ", up to "
                        + next(terms).en() + ".",
                minutes.fr() + "; une visite compte au moins "
                        + minutes(terms.minimum(), false).fr() + each.fr() + of.fr() + ", "
                        + next(terms).fr() + ".");
    }

    private static Wording minutes(int count, boolean outside) {
        return new Wording(
                count + (count == 1 ? " minute" : " minutes") + (outside ? " outside working hours" : ""),
                count + (count == 1 ? " minute" : " minutes") + (outside ? " hors des heures ouvrables" : ""));
    }

    private static Wording next(LabourTerms terms) {
        return switch (terms.step()) {
            case 15 -> new Wording("the next quarter hour", "jusqu’au quart d’heure suivant");
            case 30 -> new Wording("the next half hour", "jusqu’à la demi-heure suivante");
            case 60 -> new Wording("the next whole hour", "jusqu’à l’heure suivante");
            default ->
                new Wording(
                        "the next " + terms.step() + " minutes",
                        "par tranches entières de " + terms.step() + " minutes");
        };
    }
}
