package changeover.deploy.bench;

import changeover.contracts.catalogue.Cadence;
import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.CatalogueJson;
import changeover.contracts.catalogue.Task;
import changeover.contracts.catalogue.Who;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** The rows before a season: so many homes with the same six machines, each with an agreement that was accepted. */
final class SeasonShop {
    private static final List<String> KINDS =
            List.of("air-handler", "outdoor-heat-pump", "condensate", "hrv", "humidifier-bypass", "filter-slot");

    private static final List<String> ROWS = List.of(
            "insert into customer (key, name, language) select 'c' || g, 'Customer ' || g, 'en' from generate_series(1, %d) g",
            "insert into home (key, street, city, region, country) select 'h' || g, g || ' Example Street', 'Sherbrooke', 'QC', 'CA'"
                    + " from generate_series(1, %d) g",
            "insert into plan (code, name_en, name_fr, visits, price_minor, currency) values ('bench', 'Bench', 'Bench', 6, 24900, 'CAD')",
            """
            insert into agreement (number, home_id, signer_id, payer_id, plan_id, plan_code, plan_name_en, plan_name_fr, term_from, term_until,
                price_minor, currency, instalments, visits, discount_percent, included_minutes, language, offered_on, valid_until)
            select substr(h.key, 2)::int, h.id, c.id, c.id, p.id, p.code, 'Bench', 'Bench', date '2027-01-01', date '2028-01-01',
                   24900, 'CAD', 1, 6, 0, 0, 'en', date '2026-12-01', date '2026-12-31'
              from home h join customer c on substr(c.key, 2) = substr(h.key, 2), plan p""",
            "insert into agreement_unit (agreement_id, equipment_id) select a.id, e.id from agreement a join equipment e on e.home_id = a.home_id",
            """
            insert into agreement_promise (agreement_id, equipment_id, task_code, cadence, who, minutes, basis, position)
            select a.id, e.id, t.code, t.cadence, 'technician', t.minutes, t.basis, t.position
              from agreement a join equipment e on e.home_id = a.home_id join bench_task t on t.kind = e.kind""",
            "insert into agreement_acceptance (agreement_id, day, by_name, channel) select id, date '2026-12-10', 'Example', 'counter' from agreement",
            "analyze");

    private SeasonShop() {}

    static void fill(Connection owner, UUID tenant, int agreements) throws SQLException {
        try (Statement statement = owner.createStatement()) {
            statement.execute("select set_config('app.tenant', '" + tenant + "', false)");
            statement.execute(
                    "create temporary table bench_task (kind text, code text, cadence jsonb, minutes int, basis text, position int)");
            tasks(owner);
            for (String sql : ROWS) {
                statement.execute(sql.formatted(agreements));
                if (sql.startsWith("insert into home")) {
                    statement.execute(
                            "insert into equipment (home_id, kind, name) select h.id, k, k from home h, unnest(array['"
                                    + String.join("','", KINDS) + "']) k");
                }
            }
        }
    }

    private static void tasks(Connection owner) throws SQLException {
        try (PreparedStatement insert =
                owner.prepareStatement("insert into bench_task values (?, ?, ?::jsonb, ?, ?, ?)")) {
            int position = 0;
            for (String kind : KINDS) {
                for (Task task : Catalogue.shipped().tasksFor(kind, Map.of())) {
                    if (task.who() == Who.TECHNICIAN && !(task.cadence() instanceof Cadence.OnRequest)) {
                        insert.setString(1, kind);
                        insert.setString(2, task.code());
                        insert.setString(3, CatalogueJson.write(task.cadence()));
                        insert.setInt(4, task.minutes());
                        insert.setString(5, task.basis());
                        insert.setInt(6, position++);
                        insert.addBatch();
                    }
                }
            }
            insert.executeBatch();
        }
    }
}
