package changeover.contracts.agreements;

import changeover.contracts.agreements.TakenOverAgreements.InForce;
import changeover.contracts.calendar.DayInWords;
import changeover.contracts.calendar.Term;
import changeover.contracts.customers.NamedInLists;
import changeover.contracts.money.Money;
import changeover.contracts.plans.Plan;
import changeover.contracts.plans.Plans;
import changeover.contracts.takeover.Brought;
import changeover.contracts.takeover.BroughtFile;
import changeover.contracts.takeover.BroughtList;
import changeover.contracts.takeover.Title;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refused;
import changeover.contracts.words.Wording;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;

/** Agreements that run, as a file: a row for a home, with its plan, first day, price, what was paid and what was done. */
@ApplicationScoped
class RunningAgreementsList implements BroughtList {

    @Inject
    NamedInLists named;

    @Inject
    Plans plans;

    @Inject
    AgreementsInForce inForce;

    @Inject
    TakenOverAgreements takenOver;

    @Inject
    Businesses businesses;

    @Override
    public String code() {
        return "agreements";
    }

    @Override
    public List<Title> titles() {
        return RunningRow.TITLES;
    }

    @Override
    public int turn() {
        return 10;
    }

    @Override
    public Brought bring(BroughtFile file, LocalDate day) {
        var notes = new Brought.Notes();
        List<Plan> known = plans.all();
        var reader = new RunningRow(named.homes(), known, businesses.current().currency(), day);
        Map<BroughtFile.Row, InForce> read = new LinkedHashMap<>();
        Map<UUID, Integer> rows = new HashMap<>();
        for (BroughtFile.Row row : file.rows()) {
            try {
                InForce one = reader.read(row);
                Integer before = rows.putIfAbsent(one.homeId(), row.number());
                if (before != null) {
                    throw Refusal.of("brought.twice", Map.of("row", before))
                            .at(RunningRow.HOME)
                            .thrown();
                }
                read.put(row, one);
            } catch (Refused refused) {
                notes.fault(row.number(), refused);
            }
        }
        Map<UUID, List<AgreementsInForce.Standing>> standing = inForce.of(rows.keySet());
        Map<String, Wording> called = known.stream().collect(Collectors.toMap(Plan::code, Plan::name));
        List<InForce> fresh = new ArrayList<>();
        read.forEach((row, one) -> compare(
                row,
                one,
                called.getOrDefault(one.plan(), Brought.alike(one.plan())),
                standing.getOrDefault(one.homeId(), List.of()),
                fresh,
                notes));
        takenOver.takeOver(fresh, day);
        return notes.done();
    }

    /** A home keeps the agreement it has: the same row again changes nothing, another one is refused. */
    private static void compare(
            BroughtFile.Row row,
            InForce one,
            Wording plan,
            List<AgreementsInForce.Standing> standing,
            List<InForce> fresh,
            Brought.Notes notes) {
        Term term = Term.ofYear(one.from());
        AgreementsInForce.Standing other = standing.stream()
                .filter(stood -> stood.term().window().meets(term.window()))
                .findFirst()
                .orElse(null);
        if (other == null) {
            fresh.add(one);
            notes.change(row.number(), what(row, plan), Brought.NOTHING, said(one, term));
        } else if (other.plan().equals(one.plan())
                && other.term().equals(term)
                && other.price().equals(one.price())) {
            notes.same();
        } else {
            notes.fault(row.number(), RunningRow.FROM, Refusal.of("running.another", Map.of("number", other.number())));
        }
    }

    private static Wording what(BroughtFile.Row row, Wording plan) {
        return new Wording(row.cell(RunningRow.HOME) + ", " + plan.en(), row.cell(RunningRow.HOME) + ", " + plan.fr());
    }

    private static Wording said(InForce one, Term term) {
        Wording from = DayInWords.of(term.from());
        Wording last = DayInWords.of(term.last());
        Money price = one.price();
        return new Wording(
                from.en() + " to " + last.en() + ", " + price.format(Locale.CANADA),
                from.fr() + " au " + last.fr() + ", " + price.format(Locale.CANADA_FRENCH));
    }
}
