package changeover.billing.estimates;

import changeover.billing.ABusiness;
import changeover.billing.estimates.EstimateFacts.OtherItem;
import changeover.billing.estimates.EstimateFacts.PartItem;
import changeover.billing.pricing.ItemKind;
import changeover.billing.pricing.PriceBook;
import changeover.billing.pricing.PriceEntry;
import changeover.billing.pricing.Prices;
import changeover.billing.tax.Work;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Today;
import changeover.scheduling.closeout.VisitClosed;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A price book, and estimates and visits for the tests: an hour costs 96.00, a trip 45.00, a sensor 24.95. An hour, two sensors,
 * the trip and 15.00 of sealing make 205.90; with 5 % and 9.975 % of it, 10.30 and 20.54, the whole is 236.74.
 */
@ApplicationScoped
class AnEstimate {

    static final String SENSOR = "flame-sensor";

    @Inject
    ABusiness business;

    @Inject
    Prices prices;

    @Inject
    Estimates estimates;

    @Inject
    Offering offering;

    @Inject
    Answering answering;

    @Inject
    Event<VisitClosed> closed;

    @Inject
    Today today;

    /** Inside the business: its prices, and a part. */
    void prices() {
        price(ItemKind.LABOUR, PriceBook.HOUR, "96.00");
        price(ItemKind.TRAVEL, PriceBook.VISIT, "45.00");
        price(ItemKind.PART, SENSOR, "24.95");
        business.execute("insert into part (code, name_en, name_fr, unit, fits_key) values ('" + SENSOR
                + "', 'Flame sensor', 'Capteur de flamme', 'C62', null)");
    }

    void price(ItemKind kind, String code, String amount) {
        prices.set(new PriceEntry(kind, code, cad(amount), null, LocalDate.of(2020, 1, 1)));
    }

    EstimateFacts facts() {
        return new EstimateFacts(
                "Remplacer les deux capteurs de flamme",
                60,
                true,
                List.of(new PartItem(SENSOR, new BigDecimal("2"))),
                List.of(new OtherItem("Joint", BigDecimal.ONE, "C62", cad("15.00"), Work.REPAIR)),
                today.day().plusDays(20),
                cad("100.00"));
    }

    UUID written(UUID home, @Nullable UUID visit) {
        return estimates.write(new NewEstimate(home, null, visit, null, facts()));
    }

    /** Offered now, with a yes by a call with the office. */
    UUID accepted(UUID home) {
        UUID id = written(home, null);
        offering.offer(id);
        answering.answer(id, yes(ConsentChannel.CALL));
        return id;
    }

    NewAnswer yes(ConsentChannel channel) {
        return new NewAnswer(true, "Ida Roe", today.now(), channel, "Deux capteurs de plus");
    }

    UUID visit(UUID home, String kind) {
        UUID id = UUID.randomUUID();
        business.execute("insert into visit (id, home_id, kind, window_from, window_until, minutes) values ('" + id
                + "', '" + home + "', '" + kind + "', '2026-04-01', '2026-06-01', 60)");
        return id;
    }

    /** The visit is closed with its minutes and sensors; its draft follows. */
    void close(UUID visit, UUID home, int minutes, String sensors) {
        closed.fire(new VisitClosed(
                visit,
                home,
                null,
                "extra",
                null,
                UUID.randomUUID(),
                today.day(),
                minutes,
                60,
                minutes,
                List.of(new VisitClosed.Part(UUID.randomUUID(), SENSOR, new BigDecimal(sensors), null, "repair")),
                List.of()));
    }

    UUID draft(UUID visit) {
        return UUID.fromString(business.one("select id from invoice where visit_id = '" + visit + "'"));
    }

    static Money cad(String amount) {
        return Money.of(amount, "CAD");
    }
}
