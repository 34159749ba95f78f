package changeover.contracts.tenants;

/** What a person may do in one business. */
public enum Role {
    OWNER,
    OFFICE,
    TECHNICIAN,
    /** Reads the money and writes nothing. */
    ACCOUNTANT;

    /** The word kept in the database and said to the door. */
    public String code() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }

    public static Role of(String code) {
        return valueOf(code.toUpperCase(java.util.Locale.ROOT));
    }
}
