package changeover.deploy.demo;

import changeover.contracts.Examples;
import changeover.contracts.tenants.People;
import changeover.contracts.words.FilledOn;
import changeover.scheduling.dayplan.TechnicianBase;
import changeover.scheduling.dayplan.TechnicianBases;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;

/** The crew's own matters: where each begins the day, and a ticket that somebody must renew soon. */
@ApplicationScoped
class DemoCrew {

    private static final List<BigDecimal> ASIDE =
            List.of(new BigDecimal("0.012"), new BigDecimal("-0.021"), new BigDecimal("0.034"));

    private static final int DAYS_LEFT = 34;

    @Inject
    People people;

    @Inject
    TechnicianBases bases;

    void settle(Examples.Shop shop, List<DemoShop.Hand> hands, LocalDate today) {
        BigDecimal north = Examples.latitude(shop);
        BigDecimal east = Examples.longitude(shop);
        List<DemoShop.Hand> crew = hands.stream()
                .filter(hand -> hand.worker().role().equals("technician"))
                .toList();
        boolean french = shop.language().equals("fr");
        for (int at = 0; at < crew.size(); at++) {
            BigDecimal aside = ASIDE.get(at % ASIDE.size());
            String address = (4 + 11 * at) + (french ? ", chemin du Ruisseau" : " Mill Race Lane") + ", " + shop.city();
            bases.write(
                    crew.get(at).person(),
                    new TechnicianBase.Facts(address, north.add(aside), east.subtract(aside), 30),
                    new FilledOn(-1));
        }
        people.hold(crew.get(1).person(), "gas", french ? "G-5550102" : "G-5550103", today.plusDays(DAYS_LEFT));
    }
}
