package changeover.web;

import changeover.billing.payments.Payments;
import changeover.contracts.Examples;
import changeover.contracts.agreements.Agreements;
import changeover.contracts.agreements.Offers;
import changeover.contracts.agreements.SaleChannel;
import changeover.contracts.agreements.Yes;
import changeover.scheduling.closeout.Operation;
import changeover.scheduling.visits.Visits;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.UUID;
import java.util.concurrent.Callable;

/** One home in one shop, and the words its story is told with. */
abstract class OneHomesStory {

    static final String[] TASKS = {
        "filter-deep", "filter-thin", "filter-at-visit", "outdoor-coil", "humidifier-off", "humidifier-pad", "defrost"
    };
    static final LocalDate FROM = LocalDate.of(2026, 4, 1);
    static final LocalDate UNTIL = LocalDate.of(2027, 4, 1);

    @Inject
    AShop shops;

    @Inject
    ASeason season;

    @Inject
    ASeasonsWork work;

    @Inject
    Agreements agreements;

    @Inject
    Offers offers;

    @Inject
    Payments payments;

    @Inject
    Visits visits;

    AShop.Shop shop = new AShop.Shop(UUID.randomUUID(), "", UUID.randomUUID(), UUID.randomUUID(), UUID.randomUUID());
    UUID home = UUID.randomUUID();
    UUID payer = UUID.randomUUID();

    /** The same home, told on by somebody else. */
    void goesOnFrom(OneHomesStory earlier) {
        shop = earlier.shop;
        home = earlier.home;
        payer = earlier.payer;
    }

    static LocalDate day(String day) {
        return LocalDate.parse(day);
    }

    <T> T in(Callable<T> work) {
        return shops.in(shop, work);
    }

    void opens(Examples.Shop example, String firstDay) {
        shop = shops.open(example.place(), example.language());
        season.comes(shop, day(firstDay));
        season.prices(shop);
        home = season.home(
                shop, Examples.everyKind(example).keeping("outdoor-heat-pump", "filter-slot", "humidifier-bypass"));
        payer = season.payer(shop, home);
    }

    UUID sold(UUID agreement, String day, SaleChannel channel) {
        return in(() -> {
            agreements.accept(agreement, new Yes("Camille", day(day), channel, false));
            return agreement;
        });
    }

    UUID draft(String kind) {
        return UUID.fromString(work.said(shop, """
                        select i.id::text from invoice i where i.kind = '%s'
                         and not exists (select 1 from invoice_issue s where s.invoice_id = i.id)
                         order by i.may_issue_from limit 1""".formatted(kind)).getFirst());
    }

    static Operation part(String code, int quantity, String why) {
        return new Operation.PartTaken(code, BigDecimal.valueOf(quantity), null, null, why, null);
    }
}
