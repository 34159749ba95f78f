package changeover.billing.estimates;

import changeover.billing.tax.TaxQuestion;
import changeover.contracts.money.Money;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Currency;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Reads estimates as they stand, many in one question. */
final class EstimateRows {

    private static final String ROWS = """
            select e.id, e.version, e.home_id, concat_ws(', ', h.street, h.unit_label, h.city), h.country, h.region,
                   e.customer_id, coalesce(c.name, ''), e.language, e.call_id, e.visit_id, e.follow_up_id,
                   e.call_id is not null or coalesce(v.kind in ('call', 'extra'), false), e.words, e.minutes, e.trip,
                   e.valid_until, e.deposit_minor, e.currency, e.written_on,
                   o.label, o.day, o.subtotal_minor, o.tax_minor, o.total_minor,
                   a.how, a.by_name, a.at, a.channel, a.words,
                   case a.how when 'accepted' then coalesce((
                     select m.accepted_minor from estimate_more m
                      where m.tenant_id = e.tenant_id and m.estimate_id = e.id order by m.id desc limit 1), o.subtotal_minor) end,
                   array(select w.visit_id from estimate_work w
                          where w.tenant_id = e.tenant_id and w.estimate_id = e.id order by w.id)
              from estimate e
              join home h on h.tenant_id = e.tenant_id and h.id = e.home_id
              left join customer c on c.tenant_id = e.tenant_id and c.id = e.customer_id
              left join visit v on v.tenant_id = e.tenant_id and v.id = e.visit_id
              left join estimate_offer o on o.tenant_id = e.tenant_id and o.estimate_id = e.id
              left join estimate_answer a on a.tenant_id = e.tenant_id and a.estimate_id = e.id and a.undone_at is null
             where\s""";

    private EstimateRows() {}

    static List<Estimate> read(Connection connection, String where, Object... asked) throws SQLException {
        List<Estimate> estimates = new ArrayList<>();
        try (PreparedStatement select = connection.prepareStatement(ROWS + where)) {
            for (int at = 0; at < asked.length; at++) {
                select.setObject(at + 1, asked[at]);
            }
            ResultSet row = select.executeQuery();
            while (row.next()) {
                estimates.add(of(row));
            }
        }
        return List.copyOf(estimates);
    }

    private static Estimate of(ResultSet row) throws SQLException {
        Currency currency = Currency.getInstance(row.getString(19));
        return new Estimate(
                row.getObject(1, UUID.class),
                row.getInt(2),
                row.getObject(3, UUID.class),
                row.getString(4),
                TaxQuestion.region(row.getString(5), row.getString(6)),
                row.getObject(7, UUID.class),
                row.getString(8),
                row.getString(9),
                new Estimate.Origin(
                        row.getObject(10, UUID.class),
                        row.getObject(11, UUID.class),
                        row.getObject(12, UUID.class),
                        row.getBoolean(13)),
                row.getString(14),
                row.getInt(15),
                row.getBoolean(16),
                row.getObject(17, LocalDate.class),
                money(row, 18, currency),
                currency,
                row.getObject(20, LocalDate.class),
                offer(row, currency),
                answer(row),
                money(row, 31, currency),
                Arrays.asList((UUID[]) row.getArray(32).getArray()));
    }

    private static Estimate.@Nullable Offer offer(ResultSet row, Currency currency) throws SQLException {
        String label = row.getString(21);
        return label == null
                ? null
                : new Estimate.Offer(
                        label,
                        row.getObject(22, LocalDate.class),
                        new Money(row.getLong(23), currency),
                        new Money(row.getLong(24), currency),
                        new Money(row.getLong(25), currency));
    }

    private static Estimate.@Nullable Answer answer(ResultSet row) throws SQLException {
        String how = row.getString(26);
        String channel = row.getString(29);
        return how == null
                ? null
                : new Estimate.Answer(
                        how,
                        Objects.requireNonNull(row.getString(27)),
                        row.getObject(28, OffsetDateTime.class).toInstant(),
                        channel == null ? null : ConsentChannel.of(channel),
                        row.getString(30));
    }

    private static @Nullable Money money(ResultSet row, int column, Currency currency) throws SQLException {
        Long minor = row.getObject(column, Long.class);
        return minor == null ? null : new Money(minor, currency);
    }
}
