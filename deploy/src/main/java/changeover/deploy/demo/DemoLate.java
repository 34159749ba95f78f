package changeover.deploy.demo;

import changeover.billing.collection.Collecting;
import changeover.billing.collection.Mandates;
import changeover.billing.payments.OpenByAge;
import changeover.billing.reminders.DueReminder;
import changeover.billing.reminders.DueReminders;
import changeover.billing.reminders.Hold;
import changeover.billing.reminders.Holds;
import changeover.billing.reminders.Ladders;
import changeover.billing.reminders.Reminders;
import changeover.billing.reminders.Step;
import changeover.contracts.Examples;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

/** Who pays late and who pays by itself: a ladder with letters that wait, a promise, and mandates with their list. */
@ApplicationScoped
public class DemoLate {

    private static final int MANDATES = 3;

    @Inject
    Ladders ladders;

    @Inject
    DueReminders due;

    @Inject
    Reminders reminders;

    @Inject
    Holds holds;

    @Inject
    Mandates mandates;

    @Inject
    Collecting collecting;

    @Inject
    OpenByAge open;

    /** Inside the shop, on its last day. */
    void settle(Examples.Shop shop, LocalDate today) {
        boolean french = shop.language().equals("fr");
        collect(french, today);
        remind(french, today);
    }

    /** Some agreed to be collected from; one of them was, the others stand on the list. */
    private void collect(boolean french, LocalDate today) {
        List<UUID> willing = open.on(today, null).stream()
                .sorted((one, other) -> other.dueDay().compareTo(one.dueDay()))
                .map(OpenByAge.Item::customerId)
                .distinct()
                .limit(MANDATES)
                .toList();
        for (int i = 0; i < willing.size(); i++) {
            int end = 312 + 29 * i;
            mandates.sign(
                    willing.get(i),
                    today.minusDays(30L + i),
                    french ? "Accord signé, compte se terminant par " + end : "Signed paper, account ending in " + end);
        }
        if (willing.size() == MANDATES) {
            Map<UUID, Collecting.Drawn> first = collecting.until(LocalDate.of(9998, 12, 31)).stream()
                    .filter(one -> one.item().customerId().equals(willing.getLast()))
                    .collect(Collectors.toMap(one -> one.item().id(), Collecting.Due::drawn));
            if (!first.isEmpty()) {
                collecting.collected(first, today.minusDays(1));
            }
        }
    }

    /** One letter has left, one customer has promised a day, the others wait for a yes. */
    private void remind(boolean french, LocalDate today) {
        Step.usual().forEach(ladders::keep);
        ladders.go(Ladders.How.LIST);
        List<DueReminder> letters = due.on(today);
        if (letters.size() > 2) {
            reminders.write(Set.of(letters.get(1).customerId()));
            holds.hold(
                    letters.get(2).customerId(),
                    null,
                    Hold.Why.PROMISE,
                    french
                            ? "Au téléphone, paiera à sa prochaine paie"
                            : "On the telephone, will pay at the next payday",
                    today.plusDays(11));
        }
    }
}
