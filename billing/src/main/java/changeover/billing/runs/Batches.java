package changeover.billing.runs;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A run's drafts go in batches of a hundred, in their order; what one payer wants on one paper stays in one batch. */
record Batches(List<List<UUID>> batches) {

    static final int SIZE = 100;

    /** @param togetherFor the payer who wants one document for all, or none */
    record Ready(UUID draft, @Nullable UUID togetherFor) {}

    static Batches of(List<Ready> drafts) {
        Map<UUID, List<UUID>> groups = new LinkedHashMap<>();
        for (Ready one : drafts) {
            UUID key = one.togetherFor() == null ? one.draft() : one.togetherFor();
            groups.computeIfAbsent(key, first -> new ArrayList<>()).add(one.draft());
        }
        List<List<UUID>> batches = new ArrayList<>();
        List<UUID> open = new ArrayList<>();
        for (List<UUID> group : groups.values()) {
            open.addAll(group);
            if (open.size() >= SIZE) {
                batches.add(List.copyOf(open));
                open.clear();
            }
        }
        if (!open.isEmpty()) {
            batches.add(List.copyOf(open));
        }
        return new Batches(List.copyOf(batches));
    }

    int drafts() {
        return batches.stream().mapToInt(List::size).sum();
    }
}
