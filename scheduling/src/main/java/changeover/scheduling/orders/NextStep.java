package changeover.scheduling.orders;

import changeover.contracts.words.Wording;
import java.time.LocalDate;
import java.util.Locale;

/** What the office does next with an order: ask when it is late, tell the customer when it is here, then make the visit and give its day. */
public enum NextStep {
    ASK("Ask the supplier", "Relancer le fournisseur"),
    WAIT("Wait for it", "Attendre l’arrivée"),
    TELL("Tell the customer", "Prévenir le client"),
    MAKE_VISIT("Make its visit", "Prévoir sa visite"),
    GIVE_DAY("Give the visit its day", "Donner son jour à la visite"),
    GO("Go there", "Y aller"),
    NOTHING("Nothing", "Rien");

    private final Wording wording;

    NextStep(String en, String fr) {
        wording = new Wording(en, fr);
    }

    public Wording wording() {
        return wording;
    }

    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static NextStep of(OrderFacts facts, LocalDate today) {
        return switch (OrderStanding.of(facts, today)) {
            case LATE -> ASK;
            case COMING -> WAIT;
            case HERE -> facts.told() ? MAKE_VISIT : TELL;
            case PLANNED -> !facts.told() ? TELL : facts.second() == OrderFacts.Second.HAS_A_DAY ? GO : GIVE_DAY;
            case USED, GONE_BACK, GIVEN_UP -> NOTHING;
        };
    }
}
