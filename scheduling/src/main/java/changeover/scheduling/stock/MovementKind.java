package changeover.scheduling.stock;

import java.util.Locale;

/** Why parts move: they arrive, change place, are used at a visit, are counted, go back, or are given to a home between visits. */
public enum MovementKind {
    RECEIPT,
    MOVE,
    USE,
    COUNT,
    RETURN,
    GIVE;

    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    static MovementKind of(String code) {
        return valueOf(code.toUpperCase(Locale.ROOT));
    }
}
