package changeover.billing.openings;

import changeover.contracts.calendar.DayInWords;
import changeover.contracts.customers.NamedInLists;
import changeover.contracts.money.Money;
import changeover.contracts.takeover.Brought;
import changeover.contracts.takeover.BroughtFile;
import changeover.contracts.takeover.BroughtList;
import changeover.contracts.takeover.Title;
import changeover.contracts.takeover.WrittenFigure;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.words.Checks;
import changeover.contracts.words.Folded;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refused;
import changeover.contracts.words.Wording;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

/** What customers owe and have prepaid from before, as a file: a row for a sum. */
@ApplicationScoped
class BalancesList implements BroughtList {

    private static final String CUSTOMER = "customer";
    private static final String KIND = "kind";
    private static final String SINCE = "since";
    private static final String AMOUNT = "amount";
    private static final String WORDS = "words";

    private static final Set<String> OWED = Set.of("", "owed", "du");
    private static final Set<String> PREPAID = Set.of("prepaid", "paye d avance");

    @Inject
    NamedInLists named;

    @Inject
    OpeningBalances openings;

    @Inject
    Prepaid prepaid;

    @Inject
    Businesses businesses;

    @Override
    public String code() {
        return "balances";
    }

    @Override
    public List<Title> titles() {
        return List.of(
                Title.needed(CUSTOMER, "client"),
                Title.more(KIND, "sorte"),
                Title.needed(SINCE, "depuis"),
                Title.needed(AMOUNT, "montant"),
                Title.needed(WORDS, "pour quoi"));
    }

    @Override
    public int turn() {
        return 40;
    }

    @Override
    public Brought bring(BroughtFile file, LocalDate day) {
        var notes = new Brought.Notes();
        NamedInLists.Names customers = named.customers();
        Set<OpeningBalances.Opening> owed = new HashSet<>();
        openings.all().forEach(kept -> owed.add(kept.opening()));
        Set<Prepaid.Ahead> ahead = new HashSet<>();
        prepaid.all().forEach(kept -> ahead.add(kept.ahead()));
        List<OpeningBalances.Opening> fresh = new ArrayList<>();
        for (BroughtFile.Row row : file.rows()) {
            try {
                UUID customer = customers.find(row, CUSTOMER);
                Money amount = amount(row.cell(AMOUNT));
                String words = words(row.cell(WORDS));
                if (isPrepaid(row.cell(KIND))) {
                    var one = new Prepaid.Ahead(customer, amount, words);
                    if (ahead.add(one)) {
                        prepaid.keep(one);
                        note(row, amount, new Wording("prepaid", "payé d’avance"), notes);
                    } else {
                        notes.same();
                    }
                } else {
                    LocalDate since = row.dayUntil(SINCE, day);
                    var one = new OpeningBalances.Opening(customer, since, amount, words);
                    if (owed.add(one)) {
                        fresh.add(one);
                        Wording in = DayInWords.of(since);
                        note(row, amount, new Wording("owed since " + in.en(), "dû depuis le " + in.fr()), notes);
                    } else {
                        notes.same();
                    }
                }
            } catch (Refused refused) {
                notes.fault(row.number(), refused);
            }
        }
        openings.add(fresh);
        return notes.done();
    }

    private static void note(BroughtFile.Row row, Money amount, Wording how, Brought.Notes notes) {
        notes.change(
                row.number(),
                Brought.alike(row.cell(CUSTOMER) + ", " + row.cell(WORDS)),
                Brought.NOTHING,
                new Wording(
                        amount.format(Locale.CANADA) + ", " + how.en(),
                        amount.format(Locale.CANADA_FRENCH) + ", " + how.fr()));
    }

    private static boolean isPrepaid(String said) {
        String folded = Folded.of(said);
        if (PREPAID.contains(folded)) {
            return true;
        }
        if (!OWED.contains(folded)) {
            throw Refusal.of("brought.owed-or-prepaid", Map.of("said", said))
                    .at(KIND)
                    .thrown();
        }
        return false;
    }

    private Money amount(String said) {
        Currency currency = businesses.current().currency();
        BigDecimal amount = WrittenFigure.read(said)
                .filter(figure -> figure.signum() > 0
                        && figure.stripTrailingZeros().scale() <= currency.getDefaultFractionDigits())
                .orElseThrow(() -> Refusal.of("brought.figure", Map.of("said", said))
                        .at(AMOUNT)
                        .thrown());
        return Money.of(amount.setScale(currency.getDefaultFractionDigits()), currency);
    }

    private static String words(String said) {
        if (said.isEmpty()) {
            throw Refusal.of("brought.missing").at(WORDS).thrown();
        }
        var checks = new Checks();
        String words = checks.line(WORDS, said);
        checks.orRefuse();
        return words;
    }
}
