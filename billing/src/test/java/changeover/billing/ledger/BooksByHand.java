package changeover.billing.ledger;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.LongStream;

/**
 * The books kept beside the product, in whole cents and by the shortest way: what a customer owes is what was invoiced, less what
 * was credited and paid, and what is kept of a tax is the tax of what is still charged.
 */
final class BooksByHand {

    /** Thousandths of a percent, by place; the taxes of Quebec are two, each on the price before tax. */
    private static final Map<String, List<Long>> RATES = Map.of("QC", List.of(5_000L, 9_975L), "NS", List.of(14_000L));

    /** An issued invoice: its lines before tax, and what of each is still charged. */
    static final class Paper {
        final UUID customer;
        final String place;
        final long[] charged;

        Paper(UUID customer, String place, long... charged) {
            this.customer = customer;
            this.place = place;
            this.charged = charged.clone();
        }

        private long net() {
            return LongStream.of(charged).sum();
        }

        private long taxes() {
            return RATES.get(place).stream()
                    .mapToLong(rate -> (net() * rate + 50_000) / 100_000)
                    .sum();
        }
    }

    private record Paid(UUID customer, long cents) {}

    final Map<UUID, Paper> papers = new HashMap<>();
    private final Map<UUID, Long> balances = new HashMap<>();
    private final Map<UUID, Paid> payments = new HashMap<>();
    private final List<String> events = new ArrayList<>();
    long documents;
    long credits;
    long net;
    long taxes;

    void invoiced(UUID id, Paper paper) {
        papers.put(id, paper);
        documents++;
        net += paper.net();
        taxes += paper.taxes();
        owes(paper.customer, paper.net() + paper.taxes());
        event("invoice", paper.net() + paper.taxes());
    }

    /** @param back before tax, of the line at that place; all of every line when it is null */
    void credited(UUID id, int line, Long back) {
        Paper paper = papers.get(id);
        long netBefore = paper.net();
        long taxesBefore = paper.taxes();
        if (back == null) {
            Arrays.fill(paper.charged, 0);
        } else {
            paper.charged[line] -= back;
        }
        long netBack = netBefore - paper.net();
        long taxBack = taxesBefore - paper.taxes();
        credits++;
        net -= netBack;
        taxes -= taxBack;
        owes(paper.customer, -netBack - taxBack);
        event("credit", netBack + taxBack);
    }

    void paid(UUID payment, UUID customer, long cents) {
        payments.put(payment, new Paid(customer, cents));
        owes(customer, -cents);
        event("paid", cents);
    }

    void undone(UUID payment) {
        Paid paid = payments.remove(payment);
        owes(paid.customer(), paid.cents());
        event("undone", paid.cents());
    }

    void givenBack(UUID customer, long cents) {
        owes(customer, cents);
        event("given back", cents);
    }

    /** What the customer owes; below nought when we keep money for them. */
    long balance(UUID customer) {
        return balances.getOrDefault(customer, 0L);
    }

    long balance() {
        return balances.values().stream().mapToLong(Long::longValue).sum();
    }

    /** Every event with its cents, to compare two goings of one year. */
    List<String> events() {
        return List.copyOf(events);
    }

    private void owes(UUID customer, long cents) {
        balances.merge(customer, cents, Long::sum);
    }

    private void event(String what, long cents) {
        events.add(what + " " + cents);
    }
}
