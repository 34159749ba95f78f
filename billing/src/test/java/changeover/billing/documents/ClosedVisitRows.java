package changeover.billing.documents;

import changeover.billing.ABusiness;
import java.util.HexFormat;
import java.util.UUID;

/** The rows of a visit that was closed with a finding, a photo and a next visit. */
final class ClosedVisitRows {

    static final UUID TECHNICIAN = UUID.randomUUID();
    static final String PHOTO = "a".repeat(64);

    private final ABusiness business;
    final UUID visit = UUID.randomUUID();
    final UUID unit = UUID.randomUUID();
    final UUID task = UUID.randomUUID();
    final UUID finding = UUID.randomUUID();

    ClosedVisitRows(ABusiness business) {
        this.business = business;
    }

    void write() {
        UUID customer = business.customer("Ida Roe");
        UUID home = business.home(customer, "QC");
        put("home_part (home_id, customer_id, part, from_day)", home, customer, "gets_report", "2020-01-01");
        put(
                "membership (person_id, name, email, language, role)",
                TECHNICIAN,
                "Mateo Ruiz",
                "m@example.com",
                "fr",
                "technician");
        put("ticket (person_id, kind)", TECHNICIAN, "refrigerant");
        put("equipment (id, home_id, kind, name)", unit, home, "heat-pump-outdoor", "Thermopompe");
        put(
                "visit (id, home_id, kind, window_from, window_until, minutes)",
                visit,
                home,
                "plan",
                "2026-04-01",
                "2026-06-16",
                90);
        String columns =
                "visit_task (id, visit_id, equipment_id, task_code, wording_en, wording_fr, who, minutes, due_from,"
                        + " due_until, reason_en, reason_fr, basis)";
        put(
                columns,
                task,
                visit,
                unit,
                "own-wash",
                "Wash the coil",
                "Laver le serpentin",
                "technician",
                20,
                "2026-04-01",
                "2026-06-16",
                "Spring",
                "Printemps",
                "common practice");
        UUID other = UUID.randomUUID();
        put(
                columns,
                other,
                visit,
                unit,
                "own-read",
                "Read it",
                "Mesurer",
                "technician",
                5,
                "2026-04-01",
                "2026-06-16",
                "Spring",
                "Printemps",
                "common practice");
        put("task_outcome (id, visit_id, visit_task_id, outcome)", UUID.randomUUID(), visit, task, "done");
        put(
                "task_outcome (id, visit_id, visit_task_id, outcome, reason)",
                UUID.randomUUID(),
                visit,
                other,
                "deferred",
                "trop froid");
        put(
                "closure (visit_id, home_id, technician_id, day, arrived_at, left_at, minutes, minutes_planned, extra_minutes, received_by, closed_at)",
                visit,
                home,
                TECHNICIAN,
                "2026-05-27",
                "2026-05-27T08:04:00-04:00",
                "2026-05-27T10:21:30-04:00",
                137,
                90,
                0,
                "Ida Roe",
                "2026-05-27T10:22:00-04:00");
        put("visit_ending (visit_id, how, day)", visit, "closed", "2026-05-27");
        put(
                "reading (id, visit_id, visit_task_id, home_id, equipment_id, code, value, unit, entered_value, entered_unit, high, standing, day)",
                UUID.randomUUID(),
                visit,
                task,
                home,
                unit,
                "own-amps",
                "14.2",
                "A",
                "14.2",
                "A",
                "12.000000",
                "above",
                "2026-05-27");
        put(
                "finding (id, visit_id, home_id, equipment_id, visit_task_id, level, text, language, next_step, told_to, answer, day)",
                finding,
                visit,
                home,
                unit,
                task,
                "urgent",
                "Il bruisse.",
                "fr",
                "visit",
                "Ida Roe",
                "yes",
                "2026-05-27");
        put("photo (id, visit_id, sha256, finding_id, caption)", UUID.randomUUID(), visit, PHOTO, finding, "Le palier");
        String jpeg = HexFormat.of().formatHex(PaperExamples.photo(200, 100).jpeg());
        put(
                "photo_bytes (sha256, kept_sha256, media_type, width, height, bytes)",
                PHOTO,
                PHOTO,
                "image/jpeg",
                200,
                100,
                "\\x" + jpeg);
        UUID shelf = UUID.randomUUID();
        put("stock_place (id, kind, name)", shelf, "shelf", "Tablette deux");
        put("part (code, name_en, name_fr, unit, size)", "f-16254", "Filter", "Filtre", "H87", "16 × 25 × 4");
        put("part_used (id, visit_id, part_code, quantity, place_id)", UUID.randomUUID(), visit, "f-16254", 2, shelf);
        for (String day : new String[] {"2026-06-10", "2026-07-10", "2027-01-10"}) {
            agreementTask(home, customer, day);
        }
        UUID next = UUID.randomUUID();
        put(
                "visit (id, home_id, kind, window_from, window_until, minutes)",
                next,
                home,
                "plan",
                "2026-09-01",
                "2026-11-16",
                90);
        put(
                "appointment (visit_id, technician_id, day, starts, ends)",
                next,
                TECHNICIAN,
                "2026-10-15",
                "08:00",
                "09:30");
    }

    private void agreementTask(UUID home, UUID customer, String day) {
        UUID plan = UUID.randomUUID();
        UUID agreement = UUID.randomUUID();
        put(
                "plan (id, code, name_en, name_fr, visits, price_minor, currency)",
                plan,
                "p" + day,
                "Two",
                "Deux",
                2,
                24900,
                "CAD");
        put(
                "agreement (id, number, home_id, signer_id, payer_id, plan_id, plan_code, plan_name_en, plan_name_fr, term_from, term_until,"
                        + " price_minor, currency, instalments, visits, discount_percent, included_minutes, language, offered_on, valid_until)",
                agreement,
                Math.abs(day.hashCode()),
                home,
                customer,
                customer,
                plan,
                "p" + day,
                "Two",
                "Deux",
                "2026-04-01",
                "2027-04-01",
                24900,
                "CAD",
                1,
                2,
                10,
                30,
                "fr",
                "2026-03-01",
                "2026-04-01");
        put(
                "household_task (home_id, agreement_id, task_code, wording_en, wording_fr, due_from, due_on)",
                home,
                agreement,
                "filter-look",
                "Look at the filter",
                "Regarder le filtre",
                "2026-06-01",
                day);
    }

    private void put(String into, Object... values) {
        StringBuilder sql = new StringBuilder("insert into " + into + " values (");
        for (int at = 0; at < values.length; at++) {
            sql.append(at == 0 ? "" : ", ")
                    .append('\'')
                    .append(values[at].toString().replace("'", "''"))
                    .append('\'');
        }
        business.execute(sql.append(')').toString());
    }
}
