package changeover.billing.runs;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A run's drafts go in ten batches of 5 to 100 each, or in more of a hundred, in their order: a short run too is seen to go on and
 * may be halted. What one payer wants on one paper stays in one batch.
 */
record Batches(List<List<UUID>> batches) {

    private static final int PARTS = 10;
    private static final int LEAST = 5;
    private static final int MOST = 100;

    /** @param togetherFor the payer who wants one document for all, or none */
    record Ready(UUID draft, @Nullable UUID togetherFor) {}

    static Batches of(List<Ready> drafts) {
        Map<UUID, List<UUID>> groups = new LinkedHashMap<>();
        for (Ready one : drafts) {
            UUID key = one.togetherFor() == null ? one.draft() : one.togetherFor();
            groups.computeIfAbsent(key, first -> new ArrayList<>()).add(one.draft());
        }
        int size = Math.clamp(Math.ceilDiv(drafts.size(), PARTS), LEAST, MOST);
        List<List<UUID>> batches = new ArrayList<>();
        List<UUID> open = new ArrayList<>();
        for (List<UUID> group : groups.values()) {
            open.addAll(group);
            if (open.size() >= size) {
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
