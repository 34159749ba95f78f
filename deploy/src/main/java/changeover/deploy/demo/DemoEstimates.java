package changeover.deploy.demo;

import changeover.billing.estimates.Answering;
import changeover.billing.estimates.ConsentChannel;
import changeover.billing.estimates.EstimateFacts;
import changeover.billing.estimates.EstimateFacts.OtherItem;
import changeover.billing.estimates.EstimateFacts.PartItem;
import changeover.billing.estimates.EstimateMoney;
import changeover.billing.estimates.EstimateWorks;
import changeover.billing.estimates.Estimates;
import changeover.billing.estimates.NewAnswer;
import changeover.billing.estimates.NewEstimate;
import changeover.billing.estimates.Offering;
import changeover.billing.payments.InvoiceFilter;
import changeover.billing.payments.InvoiceLists;
import changeover.billing.payments.Standing;
import changeover.billing.payments.Way;
import changeover.billing.tax.Work;
import changeover.contracts.Examples;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Today;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Repairs that were estimated: one accepted with its visit and its deposit, one that expires soon, one refused, one draft. */
@ApplicationScoped
public class DemoEstimates {

    @Inject
    InvoiceLists lists;

    @Inject
    Estimates estimates;

    @Inject
    Offering offering;

    @Inject
    Answering answering;

    @Inject
    EstimateWorks works;

    @Inject
    EstimateMoney money;

    @Inject
    Today today;

    /** Inside the shop, on its last day. */
    void write(Examples.Shop shop, LocalDate day) {
        boolean french = shop.language().equals("fr");
        List<UUID> homes = lists.rows(InvoiceFilter.standing(Standing.PAID).page(0, 100), day).stream()
                .flatMap(row -> Stream.ofNullable(row.homeId()))
                .distinct()
                .limit(4)
                .toList();
        if (homes.size() < 4) {
            return;
        }
        UUID accepted = offered(
                homes.get(0),
                facts(
                        french ? "Remplacer la pompe à condensats" : "Replace the condensate pump",
                        90,
                        List.of(new PartItem("PMP-1", BigDecimal.ONE)),
                        List.of(),
                        day.plusDays(30),
                        Money.of("100.00", "CAD")));
        answering.answer(accepted, said(true, french ? "Oui, au téléphone" : "Yes, on the telephone"));
        works.makeVisit(accepted, day.plusDays(10), 90);
        money.take(accepted, day, Way.CARD, Money.of("100.00", "CAD"), null);
        offered(
                homes.get(1),
                facts(
                        french ? "Remplacer le moteur du ventilateur" : "Replace the blower motor",
                        120,
                        List.of(),
                        List.of(part(
                                french ? "Moteur de ventilateur, sur commande" : "Blower motor, to order", "385.00")),
                        day.plusDays(5),
                        null));
        UUID refused = offered(
                homes.get(2),
                facts(
                        french ? "Sceller et isoler les conduits du grenier" : "Seal and insulate the attic ducts",
                        240,
                        List.of(),
                        List.of(part(french ? "Matériel" : "Material", "210.00")),
                        day.plusDays(20),
                        null));
        answering.answer(refused, said(false, french ? "Pas cette année" : "Not this year"));
        estimates.write(new NewEstimate(
                homes.get(3),
                null,
                null,
                null,
                facts(
                        french ? "Remplacer le thermostat" : "Replace the thermostat",
                        45,
                        List.of(),
                        List.of(part("Thermostat", "189.00")),
                        day.plusDays(30),
                        null)));
    }

    private UUID offered(UUID home, EstimateFacts facts) {
        UUID id = estimates.write(new NewEstimate(home, null, null, null, facts));
        offering.offer(id);
        return id;
    }

    private static EstimateFacts facts(
            String words,
            int minutes,
            List<PartItem> parts,
            List<OtherItem> others,
            LocalDate until,
            @Nullable Money deposit) {
        return new EstimateFacts(words, minutes, true, parts, others, until, deposit);
    }

    private static OtherItem part(String words, String price) {
        return new OtherItem(words, BigDecimal.ONE, "C62", Money.of(price, "CAD"), Work.REPAIR);
    }

    private NewAnswer said(boolean yes, String words) {
        return new NewAnswer(yes, "Anselm Birk", today.now(), ConsentChannel.CALL, words);
    }
}
