package changeover.billing.pricing;

import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** The reason that stands under a line, in both languages, always with the figure that decided it. */
final class Reasons {

    static final Wording LABOUR = new Wording("Labour", "Main-d’œuvre");
    static final Wording PROMISED = new Wording("Work promised by the plan", "Travaux promis par la formule");
    static final Wording TRAVEL = new Wording("Travel to the home", "Déplacement au domicile");
    static final Wording RETURN = new Wording(
            "No charge: we came back for our own work.", "Sans frais : nous sommes revenus pour notre propre travail.");
    static final Wording GUARANTEED = new Wording(
            "No charge: labour and trip go with the part under guarantee.",
            "Sans frais : la main-d’œuvre et le déplacement suivent la pièce sous garantie.");
    static final Wording OTHER_WORK = new Wording(
            "For other work than the part under guarantee.", "Pour d’autres travaux que la pièce sous garantie.");
    static final Wording NO_PLAN = new Wording("Not covered by a plan.", "Non couvert par une formule.");

    private Reasons() {}

    static Wording promised(Coverage coverage) {
        Wording plan = coverage.plan();
        return plan == null
                ? new Wording("No charge.", "Sans frais.")
                : new Wording(
                        "Included in your plan " + plan.en() + ".", "Compris dans votre formule " + plan.fr() + ".");
    }

    static Wording minutes(int used, int left) {
        return new Wording(
                (left == 1
                                ? "Included: 1 minute of the plan’s extra work was left, "
                                : "Included: " + left + " minutes of the plan’s extra work were left, ")
                        + (used == 1 ? "1 is used here." : used + " are used here."),
                (left == 1
                                ? "Compris : il restait 1 minute de travaux additionnels à la formule, "
                                : "Compris : il restait " + left + " minutes de travaux additionnels à la formule, ")
                        + (used == 1 ? "1 sert ici." : used + " servent ici."));
    }

    static Wording part(Coverage.Cap cap) {
        return new Wording(
                "Included: the plan gives " + plain(cap.cap()) + " a term, " + plain(cap.left()) + " left before this.",
                "Compris : la formule en donne " + comma(cap.cap()) + " par entente, il en restait " + comma(cap.left())
                        + ".");
    }

    static Wording notIncluded(Coverage coverage, Coverage.@Nullable Cap cap) {
        if (coverage.plan() == null) {
            return NO_PLAN;
        }
        Wording beyond = cap == null
                ? new Wording("Not included in the plan", "Non compris dans la formule")
                : new Wording(
                        "Beyond the " + plain(cap.cap()) + " a term that the plan gives",
                        "Au-delà des " + comma(cap.cap()) + " par entente que donne la formule");
        BigDecimal percent = coverage.discountPercent();
        return percent.signum() == 0
                ? new Wording(beyond.en() + ".", beyond.fr() + ".")
                : new Wording(
                        beyond.en() + "; your plan takes " + plain(percent) + "% off.",
                        beyond.fr() + "; votre formule accorde " + comma(percent) + "\u00a0% de rabais.");
    }

    static Wording people(int count) {
        return new Wording("The minutes of " + count + " people.", "Les minutes de " + count + " personnes.");
    }

    static Wording both(Wording first, Wording second) {
        return new Wording(first.en() + " " + second.en(), first.fr() + " " + second.fr());
    }

    private static String plain(BigDecimal number) {
        return number.stripTrailingZeros().toPlainString();
    }

    private static String comma(BigDecimal number) {
        return plain(number).replace('.', ',');
    }
}
