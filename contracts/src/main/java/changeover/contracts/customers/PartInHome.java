package changeover.contracts.customers;

import java.util.Locale;

/** What a customer is to a home: who signs, who pays, who lives there, who lets us in, who gets the report. */
public enum PartInHome {
    SIGNS,
    PAYS,
    LIVES,
    LETS_IN,
    GETS_REPORT;

    /** The word kept in the database: signs, pays, lives, lets_in, gets_report. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static PartInHome of(String code) {
        return valueOf(code.toUpperCase(Locale.ROOT));
    }

    /** One contract has one signature and one payer; any number may live there, open the door or read the report. */
    public boolean onlyOneAtATime() {
        return this == SIGNS || this == PAYS;
    }
}
