package changeover.billing.documents;

import changeover.contracts.tenants.Locales;
import changeover.scheduling.partners.Partner;
import io.agroal.api.AgroalDataSource;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Who, where and when of a closed visit, and in whose language its report is: whoever gets it, else who signs or pays.
 *
 * @param technician who did the work: a technician, or a partner
 * @param typedBy who wrote it down in their name, from paper or from the partner's word; null where they did so themselves
 */
record ReportHead(
        UUID homeId,
        LocalDate day,
        @Nullable Instant arrived,
        @Nullable Instant left,
        String technician,
        @Nullable String tickets,
        String kind,
        @Nullable String receivedBy,
        @Nullable String nobodyWhy,
        @Nullable String note,
        String customer,
        Locale language,
        List<String> home,
        @Nullable String typedBy) {

    private static final String SQL = """
            select c.home_id, c.day, c.arrived_at, c.left_at, coalesce(x.name, m.name, ''),
              (select string_agg(t.kind, ',' order by t.kind) from ticket t
                where t.tenant_id = c.tenant_id and t.person_id = c.technician_id),
              v.kind, c.received_by, c.nobody_why, c.household_note, coalesce(r.name, ''), coalesce(r.language, b.language),
              h.unit_label, h.street, h.city, h.region, h.postal,
              case when x.id is not null then m.name else (select p.name from operation o join membership p on p.tenant_id = o.tenant_id and p.person_id = o.person_id
                where o.tenant_id = c.tenant_id and o.visit_id = c.visit_id and o.kind = 'close' and o.state = 'taken'
                  and o.person_id <> c.technician_id order by o.place desc limit 1) end,
              x.trade
            from closure c
            join business b on b.id = c.tenant_id
            join visit v on v.tenant_id = c.tenant_id and v.id = c.visit_id
            join home h on h.tenant_id = c.tenant_id and h.id = c.home_id
            left join membership m on m.tenant_id = c.tenant_id and m.person_id = c.technician_id
            left join partner_visit_done d on d.tenant_id = c.tenant_id and d.visit_id = c.visit_id
            left join partner x on x.tenant_id = d.tenant_id and x.id = d.partner_id
            left join lateral (
              select k.name, k.language from home_part p
              join customer k on k.tenant_id = p.tenant_id and k.id = p.customer_id
              where p.tenant_id = c.tenant_id and p.home_id = c.home_id
                and p.part in ('gets_report', 'signs', 'pays', 'lives')
                and p.from_day <= c.day and (p.until_day is null or p.until_day > c.day)
              order by array_position(array['gets_report', 'signs', 'pays', 'lives'], p.part), p.id limit 1) r on true
            where c.tenant_id = current_tenant() and c.visit_id = ?::uuid
            """;

    static Optional<ReportHead> of(AgroalDataSource database, UUID visit) {
        return new Question(database, SQL).first(ReportHead::read, visit);
    }

    private static ReportHead read(ResultSet row) throws SQLException {
        Locale language = Locales.of(row.getString(12));
        Words words = Words.in(language);
        String trade = row.getString(19);
        String held = trade == null ? row.getString(6) : Partner.ticketOf(trade).orElse(null);
        return new ReportHead(
                row.getObject(1, UUID.class),
                row.getObject(2, LocalDate.class),
                instant(row, 3),
                instant(row, 4),
                row.getString(5),
                tickets(held, words),
                row.getString(7),
                row.getString(8),
                row.getString(9),
                row.getString(10),
                row.getString(11),
                language,
                Places.lines(
                        words,
                        row.getString(13),
                        row.getString(14),
                        row.getString(15),
                        row.getString(16),
                        row.getString(17)),
                row.getString(18));
    }

    private static @Nullable Instant instant(ResultSet row, int column) throws SQLException {
        OffsetDateTime at = row.getObject(column, OffsetDateTime.class);
        return at == null ? null : at.toInstant();
    }

    private static @Nullable String tickets(@Nullable String kinds, Words words) {
        if (kinds == null || kinds.isBlank()) {
            return null;
        }
        return String.join(
                ", ",
                List.of(kinds.split(",")).stream()
                        .map(kind -> words.say("ticket." + kind))
                        .toList());
    }
}
