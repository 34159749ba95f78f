package changeover.billing.pricing;

import changeover.contracts.words.Wording;
import java.math.BigDecimal;

/** How a home's zone was found, in a sentence for the line. */
final class ZoneReasons {

    static final Wording UNKNOWN = new Wording(
            "No zone is known for this home: the ordinary fee.",
            "Aucune zone connue pour ce domicile : le tarif ordinaire.");

    private ZoneReasons() {}

    static Wording postal(Wording zone, String beginning) {
        return new Wording(
                "Zone " + zone.en() + ": the postal code begins with " + beginning + ".",
                "Zone " + zone.fr() + " : le code postal commence par " + beginning + ".");
    }

    static Wording distance(Wording zone, BigDecimal kilometres) {
        return new Wording(
                "Zone " + zone.en() + ": " + plain(kilometres) + " km from our shop as the crow flies.",
                "Zone " + zone.fr() + " : à " + comma(kilometres) + "\u00a0km de notre atelier à vol d’oiseau.");
    }

    static Wording beyond(BigDecimal kilometres) {
        return new Wording(
                "Outside our zones, " + plain(kilometres) + " km from our shop as the crow flies: the ordinary fee.",
                "Hors de nos zones, à " + comma(kilometres)
                        + "\u00a0km de notre atelier à vol d’oiseau : le tarif ordinaire.");
    }

    static Wording unpriced(Wording zone) {
        return new Wording(
                "Zone " + zone.en() + " has no fee of its own: the ordinary fee.",
                "La zone " + zone.fr() + " n’a pas de tarif à elle : le tarif ordinaire.");
    }

    private static String plain(BigDecimal number) {
        return number.toPlainString();
    }

    private static String comma(BigDecimal number) {
        return plain(number).replace('.', ',');
    }
}
