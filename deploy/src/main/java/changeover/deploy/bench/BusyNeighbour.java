package changeover.deploy.bench;

import changeover.billing.runs.BillingRuns;
import changeover.billing.runs.RunWork;
import changeover.contracts.tenants.CurrentTenant;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.LongSupplier;

/** A big business that bills while a small one works: the small one's slowest hundredth, with and without it. */
@ApplicationScoped
class BusyNeighbour {

    private static final LocalDate DAY = LocalDate.of(2026, 4, 1);
    private static final int DRAFTS = 1_500;

    /** Pairs that do not count: a program that has just started bills at half its speed, with the compiler beside it. */
    private static final int WARM_UP = 5;

    private static final int CALLS = 400;

    @Inject
    BillingShop shops;

    @Inject
    BillingRuns runs;

    @Inject
    RunWork work;

    @Inject
    CurrentTenant current;

    /**
     * @param call one piece of the small one's work, in nanoseconds
     * @param end after which no further pair is begun, save that three are always made
     */
    Ratios beside(LongSupplier call, Instant end) throws Exception {
        Ratios ratios = Ratios.ofTimes("tenants", "3", "1.5");
        BillingShop.Shop shop = shops.open(DAY);
        int written = 0;
        try (ExecutorService hand = Executors.newSingleThreadExecutor()) {
            for (int pair = 1 - WARM_UP;
                    pair <= Ratios.PAIRS && (pair < 4 || Instant.now().isBefore(end));
                    pair++) {
                shops.write(shop, written, DRAFTS);
                written += DRAFTS;
                long quiet = slowest(call, CompletableFuture.completedFuture(null));
                current.run(shop.tenant(), CurrentTenant.NOBODY, () -> runs.start(DAY));
                var billing = CompletableFuture.runAsync(work::goOn, hand);
                long busy = slowest(call, billing);
                billing.get();
                if (pair > 0) {
                    ratios.add(busy, quiet);
                }
                System.out.println("tenants %s: p99 %d us beside a billing run, %d us alone"
                        .formatted(pair <= 0 ? "warm-up" : "pair " + pair, busy / 1000, quiet / 1000));
            }
        }
        return ratios;
    }

    /** At least so many calls, and as long as the other works. */
    private static long slowest(LongSupplier call, CompletableFuture<Void> other) {
        List<Long> times = new ArrayList<>();
        while (times.size() < CALLS || !other.isDone()) {
            times.add(call.getAsLong());
        }
        List<Long> sorted = times.stream().sorted().toList();
        return sorted.get(sorted.size() * 99 / 100);
    }
}
