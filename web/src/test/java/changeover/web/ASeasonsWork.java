package changeover.web;

import changeover.billing.invoices.Invoices;
import changeover.billing.payments.NewPayment;
import changeover.billing.payments.Owed;
import changeover.billing.payments.OwedBy;
import changeover.billing.payments.Payments;
import changeover.billing.payments.Way;
import changeover.contracts.calendar.Window;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Today;
import changeover.scheduling.closeout.CloseOut;
import changeover.scheduling.closeout.Operation;
import changeover.scheduling.closeout.Outcome;
import changeover.scheduling.closeout.SentOperation;
import changeover.scheduling.dayplan.Appointments;
import changeover.scheduling.visits.Visits;
import changeover.scheduling.visits.YearOfHome;
import changeover.scheduling.visits.YearsOfHomes;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;

/** What people do in a season and what the books then say. */
@ApplicationScoped
public class ASeasonsWork {

    @Inject
    AShop shops;

    @Inject
    Today today;

    @Inject
    Clock time;

    @Inject
    YearsOfHomes years;

    @Inject
    Appointments appointments;

    @Inject
    Visits visits;

    @Inject
    CloseOut closeOut;

    @Inject
    Invoices invoices;

    @Inject
    Payments payments;

    @Inject
    Owed owed;

    @Inject
    EntityManager rows;

    /** Each visit as "first day .. last day standing: tasks". */
    List<String> visits(AShop.Shop shop, UUID home, LocalDate from, LocalDate until) {
        return year(shop, home, from, until).visits().stream()
                .map(going -> going.window().from() + " .. " + going.window().last() + " " + going.standing() + ": "
                        + going.tasks().stream()
                                .map(YearOfHome.Line::taskCode)
                                .sorted()
                                .collect(Collectors.joining(" ")))
                .toList();
    }

    YearOfHome year(AShop.Shop shop, UUID home, LocalDate from, LocalDate until) {
        return shops.in(shop, () -> years.of(home, new Window(from, until), today.day()));
    }

    /** The technician closes the visit today: every task done, and this besides. */
    List<UUID> closes(AShop.Shop shop, UUID visit, List<Operation> besides) {
        shops.in(
                shop,
                () -> appointments.give(
                        visit, new Appointments.Slot(shop.technician(), today.day(), LocalTime.of(9, 0), null)));
        return shops.in(shop, () -> {
            var said = new ArrayList<Operation>();
            said.add(new Operation.Arrive());
            visits.tasksOf(visit).forEach(task -> said.add(new Operation.TaskAnswered(task.id(), Outcome.DONE, null)));
            said.addAll(besides);
            said.add(new Operation.Received("Camille", null));
            said.add(new Operation.Close(null));
            var sent = sent(said);
            closeOut.applyWhole(visit, sent, shop.technician());
            return sent.stream().map(SentOperation::id).toList();
        });
    }

    List<SentOperation> sent(List<Operation> said) {
        var sent = new ArrayList<SentOperation>();
        for (Operation one : said) {
            sent.add(SentOperation.of(UUID.randomUUID(), "tablet", sent.size() + 1L, time.instant(), one));
        }
        return sent;
    }

    /** Issues the draft today and says subtotal, each tax, total. */
    String issue(AShop.Shop shop, UUID draft) {
        shops.in(shop, () -> invoices.issue(draft, today.day()));
        var view = shops.in(shop, () -> invoices.view(draft)).orElseThrow();
        return view.label() + ": " + view.subtotal().decimal() + " + "
                + view.taxes().stream().map(tax -> tax.amount().decimal()).collect(Collectors.joining(" + ")) + " = "
                + view.total().decimal() + " by " + view.dueDay();
    }

    void pays(AShop.Shop shop, UUID customer, Way way, String amount) {
        shops.in(
                shop,
                () -> payments.take(
                        new NewPayment(customer, today.day(), way, Money.of(amount, "CAD"), null, null, List.of())));
    }

    /** What is owed and what is held for the customer today. */
    String stands(AShop.Shop shop, UUID customer) {
        OwedBy by = shops.in(shop, () -> owed.of(customer, today.day()));
        return by.open().decimal() + " owed, " + by.credit().decimal() + " held";
    }

    /** Rows as text, a line each. */
    List<String> said(AShop.Shop shop, String sql) {
        return shops.in(
                shop,
                () -> rows.createNativeQuery(sql, String.class).getResultList().stream()
                        .map(String::valueOf)
                        .toList());
    }
}
