package changeover.billing.invoices;

import changeover.contracts.agreements.AgreementSold;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.words.Wording;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Plans that somebody has to pay, with what their invoices say of them; one without a price asks for nothing. */
@ApplicationScoped
class PlansToAsk {

    @Inject
    AgroalDataSource datasource;

    @Inject
    Businesses businesses;

    List<PlanSold> of(List<AgreementSold.Sold> asked) {
        Map<UUID, AgreementSold.Sold> sold = asked.stream()
                .filter(one -> one.price().isPositive())
                .collect(Collectors.toMap(AgreementSold.Sold::agreementId, Function.identity()));
        int dueDays = businesses.profile().facts().invoiceTermsDays();
        List<PlanSold> plans = new ArrayList<>(sold.size());
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement("""
                        select a.id, a.number, a.plan_name_en, a.plan_name_fr, h.country, h.region,
                               (select p.purchase_order from home_part p
                                 where p.tenant_id = a.tenant_id and p.home_id = a.home_id
                                   and p.customer_id = a.payer_id and p.part = 'pays' and p.purchase_order is not null
                                 order by p.from_day desc limit 1)
                          from agreement a
                          join home h on h.tenant_id = a.tenant_id and h.id = a.home_id
                         where a.id = any (?) order by a.number""")) {
            select.setArray(1, InvoiceRows.uuids(connection, sold.keySet()));
            ResultSet row = select.executeQuery();
            while (row.next()) {
                AgreementSold.Sold one = Objects.requireNonNull(sold.get(row.getObject(1, UUID.class)));
                plans.add(new PlanSold(
                        one,
                        row.getInt(2),
                        new Wording(row.getString(3), row.getString(4)),
                        row.getString(5),
                        row.getString(6),
                        row.getString(7),
                        dueDays));
            }
            return plans;
        } catch (SQLException cause) {
            throw new IllegalStateException("the sold plans could not be read", cause);
        }
    }
}
