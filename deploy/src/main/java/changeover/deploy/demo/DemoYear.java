package changeover.deploy.demo;

import changeover.billing.documents.DocumentsToMake;
import changeover.billing.notices.OfferMail;
import changeover.billing.payments.InvoiceFilter;
import changeover.billing.payments.InvoiceLists;
import changeover.billing.payments.InvoiceRow;
import changeover.billing.payments.NewPayment;
import changeover.billing.payments.Payments;
import changeover.billing.payments.Standing;
import changeover.billing.payments.Way;
import changeover.contracts.Examples;
import changeover.contracts.agreements.Agreement;
import changeover.contracts.agreements.Agreements;
import changeover.contracts.agreements.Offers;
import changeover.contracts.agreements.RenewalRow;
import changeover.contracts.agreements.Renewals;
import changeover.contracts.agreements.SaleChannel;
import changeover.contracts.agreements.Yes;
import changeover.contracts.plans.Plan;
import changeover.contracts.plans.Plans;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.SettableClock;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;

/** A shop's year, day after day: plans sold, visits made, invoices issued until the last weeks and mostly paid. */
@ApplicationScoped
public class DemoYear {

    /** A plan sold on a day. */
    private record Sale(LocalDate day, UUID home, String plan, String by) {}

    /** Of a hundred invoices so many are paid; the others grow old. */
    private static final int PAID_OF_HUNDRED = 96;

    private static final int DAYS_TO_PAY = 18;

    /** Of ten customers so many take longer. */
    private static final int SLOW_OF_TEN = 4;

    private static final int SLOW_DAYS_TO_PAY = 36;

    /** So many days before the last one a door stays closed, where a fee may be asked for that. */
    private static final int CLOSED_DOOR = 75;

    /** So many days before the last one a visit is not kept. */
    private static final int NOT_KEPT = 12;

    private static final int OFFERED_OF_TEN = 8;
    private static final int POSTED_BEFORE = 25;

    @Inject
    SettableClock clock;

    @Inject
    CurrentTenant current;

    @Inject
    DemoHomes homes;

    @Inject
    DemoVisits visits;

    @Inject
    DemoRepairs repairs;

    @Inject
    DemoBilling billing;

    @Inject
    DemoMoney money;

    @Inject
    DemoEstimates estimates;

    @Inject
    DemoParts parts;

    @Inject
    DemoStops stops;

    @Inject
    DemoOutside outside;

    @Inject
    DemoBank bank;

    @Inject
    DemoLate late;

    @Inject
    DemoSeason season;

    @Inject
    Plans plans;

    @Inject
    Offers offers;

    @Inject
    Agreements agreements;

    @Inject
    Renewals renewals;

    @Inject
    OfferMail mail;

    @Inject
    InvoiceLists lists;

    @Inject
    Payments payments;

    @Inject
    DemoHouseholds ownTasks;

    @Inject
    DocumentsToMake papers;

    void pass(UUID tenant, Examples.Shop shop, List<DemoShop.Hand> hands, LocalDate opened, LocalDate today) {
        UUID office = hands.get(1).person();
        List<DemoHomes.Entered> entered = homes.enter(tenant, office, shop, today);
        List<Sale> sales = sales(entered, opened, today);
        Map<UUID, String> signers = sales.stream().collect(Collectors.toMap(Sale::home, Sale::by, (one, _) -> one));
        boolean knocked = shop.place().equals("CA-QC");
        boolean stayedAway = false;
        for (LocalDate day = opened.plusDays(1); !day.isAfter(today); day = day.plusDays(1)) {
            clock.setDay(day);
            LocalDate now = day;
            sales.stream()
                    .filter(sale -> sale.day().equals(now))
                    .forEach(sale -> current.run(tenant, office, () -> sell(sale, now)));
            if (!knocked && now.isAfter(today.minusDays(CLOSED_DOOR))) {
                knocked = visits.knockInVain(tenant, hands, now);
            }
            if (!stayedAway && now.isAfter(today.minusDays(NOT_KEPT))) {
                stayedAway = visits.stayAway(tenant, hands, now, vanStoodStill(shop));
            }
            visits.workOn(tenant, hands, now, today);
            repairs.make(tenant, hands, entered, now, today, shop.language().equals("fr"));
            if (now.equals(today.minusDays(POSTED_BEFORE))) {
                current.run(tenant, office, () -> ownTasks.post(now));
            }
            if (now.getDayOfMonth() % 5 == 0
                    || now.equals(today.minusDays(DemoBilling.LEFT))
                    || now.equals(today.minusDays(2))) {
                current.run(tenant, office, () -> billing.issue(now, today));
                current.run(tenant, office, () -> take(now));
                current.run(tenant, office, () -> renew(now));
                ownTasks.tell(tenant, office, now, signers);
            }
        }
        current.run(tenant, office, () -> money.settle(shop, today));
        current.run(tenant, office, () -> estimates.write(shop, today));
        parts.waitFor(tenant, office, shop, today);
        current.run(tenant, office, () -> outside.meet(shop, today));
        current.run(tenant, office, () -> bank.bring(shop, today));
        current.run(tenant, office, () -> late.settle(shop, today));
        current.run(tenant, office, () -> billing.leave(shop, today));
        stops.make(tenant, shop, hands, entered, today);
        visits.planAhead(tenant, hands, today);
        season.plan(tenant, office, shop, today);
        papers.makePending(tenant, 40);
    }

    private static String vanStoodStill(Examples.Shop shop) {
        return shop.language().equals("fr")
                ? "Le camion n’a pas démarré et personne d’autre n’était libre."
                : "The van did not start and nobody else was free.";
    }

    /** Most homes bought their plan ten to twelve months ago, so that renewals are near; some later, a few not yet. */
    private static List<Sale> sales(List<DemoHomes.Entered> entered, LocalDate opened, LocalDate today) {
        var sales = new ArrayList<Sale>();
        for (int i = 0; i < entered.size(); i++) {
            DemoHomes.Entered home = entered.get(i);
            if (i % 12 == 11) {
                continue;
            }
            int before = i % 3 == 2 ? 30 + i * 4 : 300 + i;
            LocalDate day = today.minusDays(Math.min(before, 395));
            sales.add(new Sale(day.isAfter(opened) ? day : opened.plusDays(1), home.id(), plan(home, i), home.signs()));
        }
        return sales;
    }

    private static String plan(DemoHomes.Entered home, int i) {
        return home.commercial() ? "roof-four" : i % 4 == 0 ? "three-visits" : "two-turns";
    }

    private void sell(Sale sale, LocalDate day) {
        Plan plan = plans.find(sale.plan()).orElseThrow();
        Agreement offer = agreements.offer(offers.forHome(sale.home(), plan.id(), day, day));
        agreements.accept(offer.id(), new Yes(sale.by(), day, SaleChannel.COUNTER, false));
    }

    /** Most renewals go out in time; of those that are due now a few still wait for somebody to offer them. */
    private void renew(LocalDate day) {
        List<UUID> due = renewals.list(day).stream()
                .filter(row -> row.standing() == RenewalRow.Standing.DUE)
                .map(RenewalRow::agreementId)
                .filter(id -> Math.floorMod(id.hashCode(), 10) < OFFERED_OF_TEN)
                .toList();
        mail.write(renewals.offerAll(due, day));
    }

    private void take(LocalDate day) {
        for (InvoiceRow row :
                lists.rows(InvoiceFilter.standing(Standing.OPEN, Standing.LATE).page(0, 500), day)) {
            boolean pays = Math.floorMod(row.id().hashCode(), 100) < PAID_OF_HUNDRED;
            boolean slow = Math.floorMod(row.customerId().hashCode(), 10) < SLOW_OF_TEN;
            int days = slow ? SLOW_DAYS_TO_PAY : DAYS_TO_PAY;
            if (pays && !row.day().plusDays(days).isAfter(day)) {
                payments.take(new NewPayment(
                        row.customerId(),
                        day,
                        Way.TRANSFER,
                        row.open(),
                        row.label(),
                        null,
                        List.of(new NewPayment.Part(row.id(), row.open()))));
            }
        }
    }
}
