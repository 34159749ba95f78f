package changeover.deploy.demo;

import changeover.billing.invoices.NumberSeries;
import changeover.billing.invoices.NumberedKind;
import changeover.billing.tax.TaxConfirmation;
import changeover.billing.tax.TaxTables;
import changeover.contracts.Examples;
import changeover.contracts.tenants.BusinessProfile;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.NewBusiness;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Place;
import changeover.contracts.tenants.Role;
import changeover.contracts.tenants.SettableClock;
import changeover.contracts.tenants.Ticket;
import changeover.web.session.SignIns;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

/** One invented shop: its people, its paper, its shelf, and then its year. */
@ApplicationScoped
public class DemoShop {

    /** How long before today the shop opens, in days. */
    private static final int DAYS_BEFORE = 400;

    /** Somebody of the shop with the person's id. */
    record Hand(UUID person, Examples.Worker worker) {}

    @Inject
    SignIns signIns;

    @Inject
    SettableClock clock;

    @Inject
    CurrentTenant current;

    @Inject
    Businesses businesses;

    @Inject
    People people;

    @Inject
    DemoCrew crew;

    @Inject
    DemoShelf shelf;

    @Inject
    DemoPrices pricing;

    @Inject
    TaxTables taxes;

    @Inject
    NumberSeries series;

    @Inject
    DemoYear year;

    /** Opens the shop and lets its year pass; answers its sign-ins, a line each. */
    List<String> live(Examples.Shop shop, LocalDate today) {
        LocalDate opened = today.minusDays(DAYS_BEFORE);
        clock.setDay(opened);
        var lines = new ArrayList<String>();
        var hands = new ArrayList<Hand>();
        String password = SignIns.password();
        for (Examples.Worker worker : shop.people()) {
            UUID person = signIns.invite(worker.email(), worker.name(), worker.language())
                    .personId();
            signIns.choose(person, password);
            hands.add(new Hand(person, worker));
            lines.add("sign in to /%s as %s (%s): %s".formatted(shop.slug(), worker.email(), worker.role(), password));
        }
        UUID tenant = UUID.randomUUID();
        UUID owner = hands.getFirst().person();
        current.run(tenant, owner, () -> open(shop, hands, opened, today));
        current.run(tenant, owner, () -> shelf.fill(shop, hands, opened));
        current.run(tenant, owner, () -> pricing.fill(shop, opened, today));
        year.pass(tenant, shop, hands, opened, today);
        return lines;
    }

    private void open(Examples.Shop shop, List<Hand> hands, LocalDate opened, LocalDate today) {
        businesses.open(
                new NewBusiness(
                        shop.slug(),
                        shop.name(),
                        shop.street(),
                        Place.of(shop.place()),
                        shop.language(),
                        shop.phone(),
                        shop.email(),
                        shop.gst(),
                        shop.qst(),
                        shop.licence(),
                        false),
                opened);
        BusinessProfile.Facts plain = businesses.profile().facts();
        businesses
                .profile()
                .rewrite(new BusinessProfile.Facts(
                        shop.language().equals("fr")
                                ? "Chauffage et climatisation, " + shop.city()
                                : "Heating and cooling, " + shop.city(),
                        shop.street(),
                        shop.city(),
                        plain.region(),
                        shop.postal(),
                        plain.country(),
                        shop.phone(),
                        shop.email(),
                        shop.licence(),
                        shop.gst(),
                        shop.qst(),
                        false,
                        true,
                        30,
                        "system",
                        null));
        if (shop.place().equals("CA-ON")) {
            series.choose(NumberedKind.INVOICE, "INV-{fiscal:4}-{number:4}");
            taxes.confirm(
                    "CA-ON hst 2010-07-01 any any any",
                    new TaxConfirmation.Facts(
                            "Canada Revenue Agency, GST/HST rates by province, as our owner read it", opened, null));
        }
        for (Hand hand : hands) {
            Examples.Worker worker = hand.worker();
            people.add(Membership.begin(
                    hand.person(), worker.name(), worker.email(), worker.language(), Role.of(worker.role())));
            worker.tickets().forEach(kind -> people.add(Ticket.of(hand.person(), kind, null, null)));
        }
        crew.settle(shop, hands, today);
    }
}
