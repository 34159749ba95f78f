package changeover.billing.bank;

import changeover.billing.payments.OpenByAge;
import changeover.billing.payments.Way;
import changeover.contracts.money.Money;
import java.text.Normalizer;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a line of the bank may be: first what was noted already, alone or several together, then by the number of an invoice, by who
 * paid with these words before, by name with the amount, by the amount alone when it is the only one. A line that took money out may be a payment
 * that came back.
 *
 * @param open everything that is open, due first comes first
 * @param noted payments that stand, of the last months
 * @param payers who paid with which words before: the words without their digits
 * @param plain names and numbers as they are compared, each made once
 */
record Matching(
        List<OpenByAge.Item> open,
        List<Noted> noted,
        Map<String, UUID> payers,
        Map<UUID, String> names,
        PlainWords plain) {

    /** So many days a bank may take between what was noted and its line. */
    private static final int DAYS_APART = 7;

    static final int SHORTEST_NAME = 3;

    /** So many customers are named of payments that came together. */
    private static final int SOME = 3;

    /**
     * @param tied to a line of the bank already; it may only come back
     * @param at when it was noted
     */
    record Noted(
            UUID paymentId,
            UUID customerId,
            LocalDate day,
            Money amount,
            String reference,
            boolean tied,
            Way way,
            Instant at) {}

    Optional<Proposal> of(BankLine line) {
        String said = plain(line.said());
        if (line.amount().isNegative()) {
            return cameBack(line, said);
        }
        return alreadyNoted(line, said)
                .or(() -> byNumber(line, said).filter(Proposal::sure))
                .or(() -> notedTogether(line))
                .or(() -> byNumber(line, said))
                .or(() -> byPayer(line))
                .or(() -> byName(line, said))
                .or(() -> byAmount(line));
    }

    private Optional<Proposal> alreadyNoted(BankLine line, String said) {
        List<Noted> same = noted.stream()
                .filter(one -> !one.tied() && one.amount().equals(line.amount()) && near(one.day(), line.day()))
                .toList();
        List<Noted> named = same.stream()
                .filter(one -> names(said, one.customerId()) || reference(said, one))
                .toList();
        List<Noted> found = named.isEmpty() ? same : named;
        return found.size() == 1
                ? Optional.of(noted(Proposal.What.NOTED, found.getFirst(), said, !named.isEmpty()))
                : Optional.empty();
    }

    private Optional<Proposal> notedTogether(BankLine line) {
        List<Noted> free = noted.stream()
                .filter(one -> !one.tied() && near(one.day(), line.day()))
                .toList();
        return NotedTogether.of(free, line)
                .map(group -> Proposal.together(
                        someNames(group),
                        group.stream().map(Noted::paymentId).toList(),
                        new Proposal.Group(
                                group.getFirst().day(), group.getFirst().way())));
    }

    private String someNames(List<Noted> group) {
        List<String> all =
                group.stream().map(one -> name(one.customerId())).distinct().toList();
        return all.stream().limit(SOME).collect(Collectors.joining(", ")) + (all.size() > SOME ? " …" : "");
    }

    private Optional<Proposal> cameBack(BankLine line, String said) {
        Money amount = line.amount().negated();
        List<Noted> same = noted.stream()
                .filter(one -> one.amount().equals(amount) && !one.day().isAfter(line.day()))
                .toList();
        List<Noted> named = same.stream()
                .filter(one -> names(said, one.customerId()) || reference(said, one))
                .toList();
        List<Noted> found = named.isEmpty() ? same : named;
        return found.size() == 1
                ? Optional.of(noted(Proposal.What.RETURNED, found.getFirst(), said, false))
                : Optional.empty();
    }

    private Proposal noted(Proposal.What what, Noted one, String said, boolean sure) {
        List<Proposal.Reason> why = new ArrayList<>(List.of(Proposal.Reason.AMOUNT));
        if (reference(said, one)) {
            why.add(Proposal.Reason.REFERENCE);
        }
        why.add(names(said, one.customerId()) ? Proposal.Reason.NAME : Proposal.Reason.ONLY_ONE);
        return new Proposal(
                what, one.customerId(), name(one.customerId()), List.of(one.paymentId()), List.of(), why, sure, null);
    }

    private Optional<Proposal> byNumber(BankLine line, String said) {
        List<OpenByAge.Item> numbered =
                open.stream().filter(item -> plain.mentions(said, item.label())).toList();
        if (numbered.isEmpty()
                || numbered.stream().map(OpenByAge.Item::customerId).distinct().count() > 1) {
            return Optional.empty();
        }
        Money sum = sum(numbered, line);
        List<Proposal.Reason> why = new ArrayList<>(List.of(Proposal.Reason.NUMBER));
        int compared = line.amount().compareTo(sum);
        why.add(compared == 0 ? Proposal.Reason.AMOUNT : compared > 0 ? Proposal.Reason.BEYOND : Proposal.Reason.LESS);
        if (names(said, numbered.getFirst().customerId())) {
            why.add(Proposal.Reason.NAME);
        }
        return Optional.of(payment(numbered, why, compared == 0));
    }

    private Optional<Proposal> byPayer(BankLine line) {
        UUID payer = payers.get(payerWords(line.words()));
        return payer == null ? Optional.empty() : ofCustomer(payer, line, Proposal.Reason.PAYER);
    }

    private Optional<Proposal> byName(BankLine line, String said) {
        List<UUID> named = open.stream()
                .map(OpenByAge.Item::customerId)
                .distinct()
                .filter(customer -> names(said, customer))
                .toList();
        return named.size() == 1 ? ofCustomer(named.getFirst(), line, Proposal.Reason.NAME) : Optional.empty();
    }

    /** One open document of that amount, or all that is open together; else the oldest first. */
    private Optional<Proposal> ofCustomer(UUID customer, BankLine line, Proposal.Reason known) {
        List<OpenByAge.Item> theirs =
                open.stream().filter(item -> item.customerId().equals(customer)).toList();
        if (theirs.isEmpty()) {
            return Optional.empty();
        }
        List<OpenByAge.Item> exact = theirs.stream()
                .filter(item -> item.open().equals(line.amount()))
                .toList();
        if (!exact.isEmpty()) {
            return Optional.of(payment(
                    List.of(exact.getFirst()),
                    List.of(known, Proposal.Reason.AMOUNT),
                    exact.size() == 1 && known == Proposal.Reason.NAME));
        }
        int compared = line.amount().compareTo(sum(theirs, line));
        if (compared == 0) {
            return Optional.of(payment(theirs, List.of(known, Proposal.Reason.AMOUNT), known == Proposal.Reason.NAME));
        }
        return Optional.of(
                payment(theirs, List.of(known, compared > 0 ? Proposal.Reason.BEYOND : Proposal.Reason.LESS), false));
    }

    private Optional<Proposal> byAmount(BankLine line) {
        List<OpenByAge.Item> exact =
                open.stream().filter(item -> item.open().equals(line.amount())).toList();
        return exact.size() == 1
                ? Optional.of(payment(exact, List.of(Proposal.Reason.AMOUNT, Proposal.Reason.ONLY_ONE), false))
                : Optional.empty();
    }

    private static Proposal payment(List<OpenByAge.Item> items, List<Proposal.Reason> why, boolean sure) {
        return new Proposal(
                Proposal.What.PAYMENT,
                items.getFirst().customerId(),
                items.getFirst().customer(),
                List.of(),
                items.stream()
                        .map(item -> new Proposal.Target(item.id(), item.label(), item.open()))
                        .toList(),
                why,
                sure,
                null);
    }

    private static Money sum(Collection<OpenByAge.Item> items, BankLine line) {
        return Money.sum(
                items.stream().map(OpenByAge.Item::open).toList(), line.amount().currency());
    }

    private static boolean near(LocalDate one, LocalDate other) {
        return Math.abs(ChronoUnit.DAYS.between(one, other)) <= DAYS_APART;
    }

    private boolean reference(String said, Noted one) {
        String reference = plain.of(one.reference());
        return reference.length() >= SHORTEST_NAME && words(said).anyMatch(reference::equals);
    }

    private String name(UUID customer) {
        return names.getOrDefault(customer, "");
    }

    /** Every word of the customer's name stands in what the bank says. */
    private boolean names(String said, UUID customer) {
        List<String> name = plain.words(name(customer));
        return !name.isEmpty() && words(said).toList().containsAll(name);
    }

    /** What stays the same when somebody pays again: the words without numbers. */
    static String payerWords(String words) {
        return words(plain(words))
                .filter(word -> word.chars().noneMatch(Character::isDigit))
                .collect(Collectors.joining(" "));
    }

    /** Capitals without accents, a blank for every other mark. */
    static String plain(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .toUpperCase(Locale.ROOT)
                .replaceAll("[^A-Z0-9]+", " ")
                .strip();
    }

    static Stream<String> words(String plain) {
        return Stream.of(plain.split(" ")).filter(word -> !word.isEmpty());
    }
}
