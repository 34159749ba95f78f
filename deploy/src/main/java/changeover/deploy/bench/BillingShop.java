package changeover.deploy.bench;

import changeover.billing.invoices.DocumentKind;
import changeover.billing.invoices.Draft;
import changeover.billing.invoices.DraftLine;
import changeover.billing.invoices.Drafts;
import changeover.billing.pricing.Charge.Covered;
import changeover.billing.tax.ContractForm;
import changeover.billing.tax.Work;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.NewBusiness;
import changeover.contracts.tenants.Place;
import changeover.contracts.words.Wording;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.UUID;

/** A business in Quebec, with both taxes, whose customers have drafts of eight lines. */
@ApplicationScoped
class BillingShop {
    static final int LINES = 8;
    private static final Currency CANADIAN = Currency.getInstance("CAD");
    private static final int CUSTOMERS = 200;

    @Inject
    CurrentTenant current;

    @Inject
    Businesses businesses;

    @Inject
    Drafts drafts;

    @Inject
    AgroalDataSource datasource;

    /** @param homes of each customer, one */
    record Shop(UUID tenant, List<UUID> customers, List<UUID> homes, LocalDate day) {}

    Shop open(LocalDate day) {
        UUID tenant = UUID.randomUUID();
        List<UUID> customers = new ArrayList<>();
        List<UUID> homes = new ArrayList<>();
        NewBusiness facts = new NewBusiness(
                "bench-billing",
                "Bench",
                "1 Example Street",
                Place.of("CA-QC"),
                "fr",
                null,
                null,
                "123456789 RT0001",
                "1234567890 TQ0001",
                null,
                false);
        current.run(tenant, CurrentTenant.NOBODY, () -> {
            businesses.open(facts, day);
            try (Connection connection = datasource.getConnection()) {
                customers.addAll(ids(connection, """
                        insert into customer (key, name, language, email, street, city, region, postal, country, invoices)
                        select 'c' || g, 'Customer ' || g, 'fr', 'c' || g || '@example.com', g || ' Example Street',
                               'Sherbrooke', 'QC', 'J1H 0A0', 'CA', 'each' from generate_series(1, %d) g returning id""".formatted(CUSTOMERS)));
                homes.addAll(ids(connection, """
                        insert into home (key, street, city, region, postal, country)
                        select 'h' || g, g || ' Example Street', 'Sherbrooke', 'QC', 'J1H 0A0', 'CA'
                          from generate_series(1, %d) g returning id""".formatted(CUSTOMERS)));
            }
            return true;
        });
        return new Shop(tenant, customers, homes, day);
    }

    private static List<UUID> ids(Connection connection, String sql) throws SQLException {
        List<UUID> ids = new ArrayList<>();
        try (var insert = connection.prepareStatement(sql);
                ResultSet row = insert.executeQuery()) {
            while (row.next()) {
                ids.add(row.getObject(1, UUID.class));
            }
        }
        return ids;
    }

    /** Writes so many drafts, the first of them that of the number. */
    void write(Shop shop, int first, int count) {
        List<Draft> all = new ArrayList<>();
        for (int number = first; number < first + count; number++) {
            all.add(draft(shop, number));
        }
        current.run(shop.tenant(), CurrentTenant.NOBODY, () -> drafts.write(all));
    }

    private static Draft draft(Shop shop, int number) {
        UUID home = shop.homes().get(number % CUSTOMERS);
        List<DraftLine> lines = new ArrayList<>();
        for (int position = 1; position <= LINES; position++) {
            lines.add(line(home, shop.day(), number, position));
        }
        return new Draft(
                DocumentKind.VISIT,
                null,
                shop.customers().get(number % CUSTOMERS),
                home,
                null,
                null,
                null,
                null,
                null,
                "fr",
                CANADIAN,
                shop.day(),
                false,
                null,
                30,
                null,
                lines);
    }

    /** The net of a line in cents, so that the bare side charges the same. */
    static long cents(int number, int position) {
        return 1000L + number % 97 * 100 + position * 735;
    }

    static String words(int position) {
        return "Part of the visit, item " + position;
    }

    private static DraftLine line(UUID home, LocalDate day, int number, int position) {
        Money net = new Money(cents(number, position), CANADIAN);
        return new DraftLine(
                home,
                null,
                null,
                null,
                day,
                "part",
                null,
                null,
                Covered.BILLABLE,
                Work.MAINTENANCE,
                ContractForm.SEPARATE,
                new Wording(words(position), words(position)),
                new Wording("Not in the plan.", "Pas dans le forfait."),
                BigDecimal.ONE,
                "C62",
                net,
                BigDecimal.ZERO,
                Money.zero(CANADIAN),
                net);
    }
}
