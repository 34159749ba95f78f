package changeover.contracts.catalogue;

import changeover.contracts.words.Wording;
import java.util.Optional;

/** What parts, hours and visits are counted and sold in: UN/ECE Recommendation 20, codes used on invoices. */
public enum TradeUnit {
    HUR("hour", "heure"),
    MIN("minute", "minute"),
    DAY("day", "jour"),
    WEE("week", "semaine"),
    MON("month", "mois"),
    QAN("quarter", "trimestre"),
    ANN("year", "année"),
    C62("one", "unité"),
    H87("piece", "pièce"),
    EA("each", "unité"),
    SET("set", "jeu"),
    PR("pair", "paire"),
    LS("lump sum", "forfait"),
    E48("service unit", "visite"),
    MTR("metre", "mètre"),
    FOT("foot", "pied"),
    MTK("square metre", "mètre carré"),
    FTK("square foot", "pied carré"),
    KGM("kilogram", "kilogramme"),
    GRM("gram", "gramme"),
    LBR("pound", "livre"),
    ONZ("ounce", "once"),
    LTR("litre", "litre"),
    MLT("millilitre", "millilitre"),
    KMT("kilometre", "kilomètre"),
    SMI("mile", "mille"),
    KWH("kilowatt hour", "kilowattheure");

    private final Wording wording;

    TradeUnit(String en, String fr) {
        this.wording = new Wording(en, fr);
    }

    /** The Recommendation 20 code itself. */
    public String code() {
        return name();
    }

    public Wording wording() {
        return wording;
    }

    public static Optional<TradeUnit> find(String code) {
        for (TradeUnit unit : values()) {
            if (unit.name().equals(code)) {
                return Optional.of(unit);
            }
        }
        return Optional.empty();
    }
}
