package changeover.billing.bank;

import changeover.billing.payments.NewPayment;
import changeover.billing.payments.Payments;
import changeover.billing.payments.Returns;
import changeover.billing.payments.Undoing;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Collectors;

/** A person says what a line of the bank is: yes to what is proposed, split over several, nobody's, or taken back. */
@ApplicationScoped
public class BankBooking {

    private static final int LONGEST_REFERENCE = 140;

    @Inject
    AgroalDataSource datasource;

    @Inject
    BankLines lines;

    @Inject
    Proposals proposals;

    @Inject
    Payments payments;

    @Inject
    Returns returns;

    @Inject
    Today today;

    /** What of a line one customer's document is paid with; without a document it is kept for the customer. */
    public record Share(UUID customerId, List<UUID> invoices, Money amount) {
        public Share {
            invoices = List.copyOf(invoices);
        }
    }

    /**
     * Books what was proposed.
     *
     * @param shown {@link Proposal#shown} as the person saw it
     * @throws changeover.contracts.words.Refused when it is no longer what would be proposed
     */
    public void accept(UUID id, String shown) {
        accept(Map.of(id, shown));
    }

    /** The same for several lines: what was proposed for one is there for no other. */
    public void accept(Map<UUID, String> shown) {
        Map<UUID, BankLine> free = new LinkedHashMap<>();
        shown.keySet().stream().sorted().forEach(id -> free.put(id, free(id)));
        oneAtATime();
        Proposals.AsItStands now = proposals.asItStands();
        shown.forEach((id, seen) -> {
            BankLine line = Objects.requireNonNull(free.get(id));
            Proposal proposal = now.of(line)
                    .filter(one -> one.shown().equals(seen))
                    .orElseThrow(() -> Refusal.of("bank.changed").thrown());
            accept(line, proposal);
            now.used(proposal);
        });
    }

    private void accept(BankLine line, Proposal proposal) {
        String why = proposal.why().stream().map(Enum::name).collect(Collectors.joining(" "));
        switch (proposal.what()) {
            case PAYMENT -> {
                List<NewPayment.Part> parts = proposal.invoices().stream()
                        .map(one -> new NewPayment.Part(one.invoiceId(), one.open()))
                        .toList();
                keep(
                        line,
                        take(line, Objects.requireNonNull(proposal.customerId()), line.amount(), parts),
                        "booked",
                        why);
            }
            case NOTED, TOGETHER -> keep(line, proposal.paymentId(), "noted", why);
            case RETURNED -> {
                UUID payment = proposal.paymentId().getFirst();
                returns.back(payment, line.day(), BankText.words(line.said(), LONGEST_REFERENCE));
                keep(line, payment, "returned", why);
            }
        }
    }

    /** These, and what they leave of the line is kept for the first one's customer. */
    public static List<Share> withTheRest(BankLine line, List<Share> shares) {
        Money rest = line.amount()
                .minus(Money.sum(
                        shares.stream().map(Share::amount).toList(),
                        line.amount().currency()));
        if (shares.isEmpty() || !rest.isPositive()) {
            return List.copyOf(shares);
        }
        List<Share> all = new ArrayList<>(shares);
        all.add(new Share(shares.getFirst().customerId(), List.of(), rest));
        return List.copyOf(all);
    }

    /** Books a payment for each customer; together they are the line, to the cent. */
    public void split(UUID id, List<Share> shares) {
        BankLine line = free(id);
        Money sum = Money.sum(
                shares.stream().map(Share::amount).toList(), line.amount().currency());
        if (!sum.equals(line.amount())) {
            throw Refusal.of("bank.split-sum", Map.of("line", line.amount(), "sum", sum))
                    .at("parts")
                    .thrown();
        }
        Map<UUID, List<Share>> byCustomer = shares.stream()
                .collect(Collectors.groupingBy(Share::customerId, LinkedHashMap::new, Collectors.toList()));
        byCustomer.forEach((customer, theirs) -> {
            Money amount = Money.sum(
                    theirs.stream().map(Share::amount).toList(), line.amount().currency());
            List<NewPayment.Part> parts = new ArrayList<>();
            theirs.forEach(share ->
                    share.invoices().forEach(invoice -> parts.add(new NewPayment.Part(invoice, share.amount()))));
            keep(line, take(line, customer, amount, parts), "booked", "SPLIT");
        });
    }

    public void dismiss(UUID id, String why) {
        BankLine line = free(id);
        if (why.strip().length() < 3) {
            throw Refusal.of("bank.dismiss-why").at("why").thrown();
        }
        try (Connection connection = datasource.getConnection();
                PreparedStatement insert =
                        connection.prepareStatement("insert into bank_line_dismissal (line_id, why) values (?, ?)")) {
            insert.setObject(1, line.id());
            insert.setString(2, why.strip());
            insert.executeUpdate();
        } catch (SQLException cause) {
            throw new IllegalStateException("what the line is could not be kept", cause);
        }
    }

    /** Takes back what was said of a line: its payments are undone as a mistake, and it waits again. */
    public void takeBack(UUID id, String why) {
        lock(id);
        var _ = lines.one(id).orElseThrow(() -> Refusal.of("bank.no-line").thrown());
        if (lines.waits(id)) {
            throw Refusal.of("bank.waits").thrown();
        }
        for (Map.Entry<UUID, String> use : uses(id).entrySet()) {
            if (use.getValue().equals("returned")) {
                throw Refusal.of("bank.returned-stays").thrown();
            }
            if (use.getValue().equals("booked")
                    && payments.undoing(use.getKey()).isEmpty()) {
                payments.undo(use.getKey(), Undoing.How.MISTAKE, today.day(), why);
            }
        }
        forget(id);
    }

    private UUID take(BankLine line, UUID customer, Money amount, List<NewPayment.Part> parts) {
        String reference =
                BankText.words(line.reference() == null ? line.words() : line.reference(), LONGEST_REFERENCE);
        return payments.take(new NewPayment(customer, line.day(), line.bookedAs(), amount, reference, null, parts));
    }

    /** The line, while nobody else says what it is. */
    private BankLine free(UUID id) {
        lock(id);
        BankLine line =
                lines.one(id).orElseThrow(() -> Refusal.of("bank.no-line").thrown());
        if (!lines.waits(id)) {
            throw Refusal.of("bank.said-already").thrown();
        }
        return line;
    }

    private void lock(UUID id) {
        try (Connection connection = datasource.getConnection();
                PreparedStatement lock = connection.prepareStatement(
                        "select pg_advisory_xact_lock(hashtextextended('bank ' || ?, 0))")) {
            KeptFiles.hold(connection);
            lock.setString(1, id.toString());
            lock.executeQuery();
        } catch (SQLException cause) {
            throw new IllegalStateException("the line could not be held", cause);
        }
    }

    /** Two lines of one amount are not tied to the same payments by two people at once. */
    private void oneAtATime() {
        try (Connection connection = datasource.getConnection();
                PreparedStatement lock = connection.prepareStatement(
                        "select pg_advisory_xact_lock(hashtextextended('bank says ' || current_tenant()::text, 0))")) {
            lock.executeQuery();
        } catch (SQLException cause) {
            throw new IllegalStateException("the bank's lines could not be held", cause);
        }
    }

    private void keep(BankLine line, UUID payment, String how, String why) {
        keep(line, List.of(payment), how, why);
    }

    private void keep(BankLine line, List<UUID> payments, String how, String why) {
        try (Connection connection = datasource.getConnection()) {
            BankLineUses.keep(connection, line.id(), payments, how, why);
        } catch (SQLException cause) {
            throw new IllegalStateException("what the line is could not be kept", cause);
        }
    }

    private Map<UUID, String> uses(UUID line) {
        try (Connection connection = datasource.getConnection()) {
            return BankLineUses.of(connection, line);
        } catch (SQLException cause) {
            throw new IllegalStateException("what the line is could not be read", cause);
        }
    }

    private void forget(UUID line) {
        try (Connection connection = datasource.getConnection()) {
            BankLineUses.forget(connection, line);
        } catch (SQLException cause) {
            throw new IllegalStateException("what was said of the line could not be taken back", cause);
        }
    }
}
