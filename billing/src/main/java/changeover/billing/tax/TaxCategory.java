package changeover.billing.tax;

import changeover.contracts.words.Wording;
import java.util.Arrays;
import java.util.Optional;

/** How a tax bears on a line, in the words of EN 16931 (UNCL5305): a lower rate is still {@code S} with its percent. */
public enum TaxCategory {
    S(new Wording("standard or reduced rate", "taux normal ou réduit")),
    Z(new Wording("zero-rated", "détaxé")),
    E(new Wording("exempt", "exonéré")),
    AE(new Wording("the customer accounts for the tax", "autoliquidation")),
    K(new Wording("supply within the European Union", "livraison intracommunautaire")),
    G(new Wording("export", "exportation")),
    O(new Wording("outside the tax", "hors champ de la taxe")),
    L(new Wording("Canary Islands tax", "taxe des îles Canaries")),
    M(new Wording("tax of Ceuta and Melilla", "taxe de Ceuta et Melilla")),
    B(new Wording("split payment, Italy", "paiement scindé, Italie"));

    private final Wording wording;

    TaxCategory(Wording wording) {
        this.wording = wording;
    }

    public static Optional<TaxCategory> of(String code) {
        return Arrays.stream(values()).filter(one -> one.name().equals(code)).findFirst();
    }

    /** Only {@code S} and the taxes of islands charge anything; the others say why nothing is charged. */
    public boolean charges() {
        return switch (this) {
            case S, L, M, B -> true;
            case Z, E, AE, K, G, O -> false;
        };
    }

    public Wording wording() {
        return wording;
    }
}
