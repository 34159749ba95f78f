package changeover.contracts.agreements;

import changeover.contracts.words.Wording;

/** How the customer said yes: the law of a place asks where, and whether face to face. */
public enum SaleChannel {
    COUNTER("counter", new Wording("at our counter", "à notre comptoir")),
    DISTANCE("distance", new Wording("at a distance", "à distance")),
    HOME("home", new Wording("at the customer’s home", "chez le client")),
    ELSEWHERE("elsewhere", new Wording("elsewhere (stand, fair)", "ailleurs (kiosque, foire)"));

    private final String code;
    private final Wording wording;

    SaleChannel(String code, Wording wording) {
        this.code = code;
        this.wording = wording;
    }

    /** As it stands in the table: {@code counter}, {@code distance}, {@code home}, {@code elsewhere}. */
    public String code() {
        return code;
    }

    public Wording wording() {
        return wording;
    }

    public static SaleChannel ofCode(String code) {
        for (SaleChannel channel : values()) {
            if (channel.code.equals(code)) {
                return channel;
            }
        }
        throw new IllegalArgumentException("channel: " + code);
    }
}
