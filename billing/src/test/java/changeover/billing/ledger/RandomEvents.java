package changeover.billing.ledger;

import changeover.billing.ABusiness;
import changeover.billing.invoices.Credits;
import changeover.billing.invoices.Drafts;
import changeover.billing.invoices.Invoices;
import changeover.billing.invoices.SomeDrafts;
import changeover.billing.payments.NewPayment;
import changeover.billing.payments.NewRefund;
import changeover.billing.payments.OpenItem;
import changeover.billing.payments.Owed;
import changeover.billing.payments.Payments;
import changeover.billing.payments.Refunds;
import changeover.billing.payments.Undoing;
import changeover.billing.payments.Way;
import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/** One event after the other, drawn by a seed: each goes into the product and into the books kept by hand. */
@ApplicationScoped
class RandomEvents {

    static final LocalDate FIRST = LocalDate.of(2025, 5, 1);
    private static final List<String> PLACES = List.of("QC", "QC", "NS", "QC", "NS", "QC", "QC", "NS");
    private static final int EVENTS_EACH = 50;
    private static final List<Way> WAYS = List.of(Way.CARD, Way.CHEQUE, Way.TRANSFER, Way.DEBIT);
    private static final Wording WHY = new Wording("Goodwill.", "Geste.");

    @Inject
    ABusiness business;

    @Inject
    Drafts drafts;

    @Inject
    Invoices invoices;

    @Inject
    Credits credits;

    @Inject
    Payments payments;

    @Inject
    Refunds refunds;

    @Inject
    Owed owed;

    @Inject
    RandomDebts debts;

    @Inject
    RandomPlans plans;

    /** @param most how many events the year has; they spread evenly over its days, fifty or fewer for each customer */
    Year begin(long seed, int most) {
        return new Year(seed, most);
    }

    /** Every third is noted up to ten days after its day. */
    static LocalDate late(Random random, LocalDate day) {
        LocalDate came = random.nextInt(3) == 0 ? day.minusDays(random.nextInt(10)) : day;
        return came.isBefore(FIRST) ? FIRST : came;
    }

    /** A year of one business: who the customers are, what happened so far, and the books by hand. */
    final class Year {
        final BooksByHand books = new BooksByHand();
        final List<PlanByHand> sold = new ArrayList<>();
        final Random random;
        private final int most;
        private final List<UUID> customers = new ArrayList<>();
        private final Map<UUID, UUID> homes = new HashMap<>();
        private final Map<UUID, String> places = new HashMap<>();
        private final List<UUID> issued = new ArrayList<>();
        private final List<UUID> paid = new ArrayList<>();
        private int happened;

        private Year(long seed, int most) {
            random = new Random(seed);
            this.most = most;
            for (int at = 0; at < Math.max(PLACES.size(), most / EVENTS_EACH); at++) {
                String place = PLACES.get(at % PLACES.size());
                UUID customer = business.customer("Ida Roe " + at);
                customers.add(customer);
                homes.put(customer, business.home(customer, place));
                places.put(customer, place);
            }
        }

        LocalDate day() {
            return FIRST.plusDays(365L * happened / most);
        }

        /** One more event, whatever can happen to the customer that the seed names; answers that customer. */
        UUID next() {
            UUID customer = customers.get(random.nextInt(customers.size()));
            LocalDate day = day();
            switch (random.nextInt(20)) {
                case 0, 1 -> credit(customer, day);
                case 2, 3, 4 -> pay(customer, day);
                case 5 -> undo(day);
                case 12, 13 -> payInCash(customer, day);
                case 6 -> payments.settle(customer, day);
                case 7 -> giveBack(customer, day);
                case 8, 9, 10, 11 ->
                    debts.next(random, new RandomDebts.Case(customer, homes.get(customer), day, paid), books);
                case 16, 17, 18, 19 ->
                    plans.next(
                            random,
                            new RandomPlans.Case(customer, homes.get(customer), places.get(customer), day),
                            books,
                            sold);
                default -> invoice(customer, day);
            }
            happened++;
            return customer;
        }

        List<UUID> customers() {
            return List.copyOf(customers);
        }

        private void invoice(UUID customer, LocalDate day) {
            long[] nets = IntStream.range(0, 1 + random.nextInt(4))
                    .mapToLong(_ -> 1 + random.nextInt(40_000))
                    .toArray();
            String[] amounts = LongStream.of(nets)
                    .mapToObj(net -> Money.ofMinor(net, "CAD").decimal())
                    .toArray(String[]::new);
            UUID id = drafts.write(List.of(SomeDrafts.on(day, customer, homes.get(customer), amounts)))
                    .getFirst();
            invoices.issue(id, day);
            issued.add(id);
            books.invoiced(id, new BooksByHand.Paper(customer, places.get(customer), nets));
        }

        private void credit(UUID customer, LocalDate day) {
            List<UUID> charged = issued.stream()
                    .filter(id -> books.papers.get(id).customer.equals(customer))
                    .filter(id -> Arrays.stream(books.papers.get(id).charged).anyMatch(line -> line > 0))
                    .toList();
            if (charged.isEmpty()) {
                invoice(customer, day);
                return;
            }
            UUID id = charged.get(random.nextInt(charged.size()));
            long[] lines = books.papers.get(id).charged;
            int line = random.nextInt(lines.length);
            if (random.nextInt(3) == 0 || lines[line] == 0) {
                invoices.issue(credits.inFull(id, day, WHY), day);
                books.credited(id, 0, null);
            } else {
                long back = 1 + random.nextLong(lines[line]);
                Map<Integer, Money> part = Map.of(line + 1, Money.ofMinor(back, "CAD"));
                invoices.issue(credits.inPart(id, day, part, WHY), day);
                books.credited(id, line, back);
            }
        }

        private void pay(UUID customer, LocalDate day) {
            List<OpenItem> open = owed.open(customer, day);
            long cents = open.isEmpty() || random.nextInt(3) == 0
                    ? 1 + random.nextInt(60_000)
                    : open.get(random.nextInt(open.size())).open().minor() + random.nextInt(2) * 333L;
            Way way = WAYS.get(random.nextInt(WAYS.size()));
            LocalDate came = late(random, day);
            UUID payment = payments.take(
                    new NewPayment(customer, came, way, Money.ofMinor(cents, "CAD"), null, null, List.of()));
            paid.add(payment);
            books.paid(payment, customer, cents);
        }

        /** A whole document in cash: the till has the nearest five cents, the document is paid to the cent. */
        private void payInCash(UUID customer, LocalDate day) {
            List<OpenItem> open = owed.open(customer, day);
            OpenItem item = open.isEmpty() ? null : open.get(random.nextInt(open.size()));
            long cents = item == null ? 0 : (item.open().minor() + 2) / 5 * 5;
            if (item == null || cents == 0) {
                pay(customer, day);
                return;
            }
            UUID payment = payments.take(new NewPayment(
                    customer,
                    day,
                    Way.CASH,
                    Money.ofMinor(cents, "CAD"),
                    null,
                    null,
                    List.of(new NewPayment.Part(item.invoiceId(), item.open()))));
            paid.add(payment);
            books.paid(payment, customer, item.open().minor());
        }

        private void undo(LocalDate day) {
            if (paid.isEmpty()) {
                return;
            }
            UUID payment = paid.remove(random.nextInt(paid.size()));
            payments.undo(payment, Undoing.How.BOUNCED, day, "No funds");
            books.undone(payment);
        }

        private void giveBack(UUID customer, LocalDate day) {
            Money credit = refunds.most(customer, day);
            if (credit.isPositive()) {
                long cents = random.nextBoolean() ? credit.minor() : 1 + random.nextLong(credit.minor());
                refunds.give(new NewRefund(customer, day, Way.TRANSFER, Money.ofMinor(cents, "CAD"), null, null));
                books.givenBack(customer, cents);
            }
        }
    }
}
