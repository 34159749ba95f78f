package changeover.billing.invoices;

import changeover.contracts.words.Refusal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;

/** What becomes of each draft that somebody asked to issue: ready for a number, or refused with the reason. */
record Judged(Map<UUID, Assessed> ready, Map<UUID, Refusal> refused) {

    Judged() {
        this(new LinkedHashMap<>(), new LinkedHashMap<>());
    }

    /** Those that were ready are judged again, after some became one. */
    void again(Judged later) {
        ready.clear();
        ready.putAll(later.ready);
        refused.putAll(later.refused);
    }
}
