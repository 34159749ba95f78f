package changeover.contracts.homesfile;

import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.Fact;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.customers.AccessCodes;
import changeover.contracts.tenants.Today;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Takes the whole register out as the homes file, in one fixed form: brought in again and taken out again, it is the same
 * bytes. Codes go with it only when the owner asks.
 */
@ApplicationScoped
public class HomesExport {

    private static final String ROWS = """
            select h.id, h.key, c.key, c.language, c.phone, c.email, h.street, h.city, h.region, h.postal, h.country,
                   trim_scale(h.latitude)::text, trim_scale(h.longitude)::text,
                   e.name, e.kind, e.make, e.model, e.serial, e.installed_on::text, e.fits::text, e.nameplate::text
              from home h
              left join lateral (select c.key, c.language, c.phone, c.email
                      from home_part p join customer c on (c.tenant_id, c.id) = (p.tenant_id, p.customer_id)
                     where (p.tenant_id, p.home_id) = (h.tenant_id, h.id) and (p.until_day is null or p.until_day > ?)
                     order by array_position(array['signs', 'pays', 'lives', 'lets_in', 'gets_report'], p.part), p.from_day
                     limit 1) c on true
              left join equipment e on (e.tenant_id, e.home_id) = (h.tenant_id, h.id) and e.ended_on is null
             where h.tenant_id = current_tenant()
               and not exists (select from home_merge m where m.tenant_id = h.tenant_id and m.other_id = h.id
                      and not exists (select from home_merge_undoing u
                        where u.tenant_id = m.tenant_id and u.merge_id = m.id))
             order by h.key collate "C", e.name collate "C"
            """;

    @Inject
    AgroalDataSource datasource;

    @Inject
    OwnCatalogue catalogue;

    @Inject
    AccessCodes codes;

    @Inject
    Today today;

    @Inject
    ObjectMapper json;

    /** @param codesFor why the codes are taken out, which is kept; null leaves them here */
    public byte[] take(@Nullable String codesFor) {
        Catalogue trade = catalogue.read().catalogue();
        Map<UUID, String> access = new HashMap<>();
        var lines = new ArrayList<Line>();
        try (var connection = datasource.getConnection();
                var ask = connection.prepareStatement(ROWS)) {
            ask.setObject(1, today.day());
            try (ResultSet row = ask.executeQuery()) {
                while (row.next()) {
                    UUID home = row.getObject(1, UUID.class);
                    String shown = codesFor == null ? "" : access.computeIfAbsent(home, id -> access(id, codesFor));
                    lines.add(line(row, shown, trade, lines.size() + 2));
                }
            }
        } catch (SQLException cause) {
            throw new IllegalStateException("the homes could not be taken out", cause);
        }
        return HomesCsv.write(lines);
    }

    private Line line(ResultSet row, String access, Catalogue trade, int number) throws SQLException {
        Map<Column, String> cells = new EnumMap<>(Column.class);
        int at = 2;
        for (Column column : Column.values()) {
            if (column == Column.ACCESS) {
                cells.put(column, access);
                continue;
            }
            String said = row.getString(at++);
            cells.put(column, said == null ? "" : said);
        }
        var kind = trade.findKind(cells.getOrDefault(Column.KIND, ""));
        cells.put(
                Column.FITS,
                pairs(
                        cells.getOrDefault(Column.FITS, ""),
                        kind.map(one -> one.fits()).orElse(List.of())));
        cells.put(
                Column.NAMEPLATE,
                pairs(
                        cells.getOrDefault(Column.NAMEPLATE, ""),
                        kind.map(one -> one.nameplate()).orElse(List.of())));
        return new Line(number, cells);
    }

    /** In the order of the kind; what the kind no longer knows follows by name. */
    private String pairs(String document, List<Fact> known) {
        if (document.isEmpty()) {
            return "";
        }
        try {
            Map<String, String> said =
                    json.readValue(document, new TypeReference<java.util.TreeMap<String, String>>() {});
            var ordered = new LinkedHashMap<String, String>();
            for (Fact fact : known) {
                String value = said.remove(fact.name());
                if (value != null) {
                    ordered.put(fact.name(), value);
                }
            }
            ordered.putAll(said);
            return Pairs.write(ordered);
        } catch (JsonProcessingException cause) {
            throw new IllegalStateException(cause);
        }
    }

    private String access(UUID home, String why) {
        if (codes.list(home).isEmpty()) {
            return "";
        }
        var pairs = new LinkedHashMap<String, String>();
        for (AccessCodes.Shown shown : codes.read(home, why)) {
            pairs.put((shown.kind() + " " + shown.label()).strip(), shown.secret());
        }
        return Pairs.write(pairs);
    }
}
