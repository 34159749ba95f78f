package changeover.scheduling.stock;

import java.util.Locale;

/** Why parts move: they arrive, change place, are used at a visit, are counted, or go back. */
public enum MovementKind {
    RECEIPT,
    MOVE,
    USE,
    COUNT,
    RETURN;

    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    static MovementKind of(String code) {
        return valueOf(code.toUpperCase(Locale.ROOT));
    }
}
