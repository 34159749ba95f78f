package changeover.web.office;

import java.util.List;

/** What the owner may read the changes of: a record with what hangs on it, or a whole list of the business. */
enum Recorded {
    CUSTOMERS(
            "customer",
            "id",
            "name",
            told("home_part", "customer_id", "part"),
            told("customer_link", "customer_id", "expires_on"),
            told("reminder_hold", "customer_id", "why"),
            told("serving_word", "customer_id", "why"),
            told("debit_mandate", "customer_id", "reference")),
    BUILDINGS("building", "id", "name", told("equipment", "building_id", "name")),
    HOMES(
            "home",
            "id",
            "street",
            told("equipment", "home_id", "name"),
            told("home_part", "home_id", "part"),
            told("hazard", "home_id", "kind"),
            told("access_code", "home_id", "label"),
            kept("household_task", "home_id", "wording_*")),
    MACHINES(
            "equipment",
            "id",
            "name",
            told("own_interval", "equipment_id", "task_code"),
            told("filter_look", "equipment_id", "day")),
    PLANS(
            "plan",
            "id",
            "name_*",
            told("plan_task", "plan_id", "task_code"),
            told("plan_part", "plan_id", "part_kind"),
            told("plan_extra", "plan_id", "kind")),
    AGREEMENTS(
            "agreement",
            "id",
            "number",
            told("agreement_acceptance", "agreement_id", "by_name"),
            told("agreement_ending", "agreement_id", "day"),
            told("settlement", "agreement_id", "kept_minor"),
            told("agreement_promise", "agreement_id", "task_code"),
            told("agreement_part", "agreement_id", "part_kind"),
            kept("household_task", "agreement_id", "wording_*")),
    VISITS(
            "visit",
            "id",
            "kind",
            told("appointment", "visit_id", "day"),
            told("appointment_second", "visit_id", "day"),
            told("visit_need", "visit_id", "why"),
            told("visit_ending", "visit_id", "how"),
            told("closure", "visit_id", "day"),
            told("part_order", "visit_id", "part_code"),
            told("part_claim", "visit_id", "part_code"),
            told("finding", "visit_id", "level"),
            told("amendment", "visit_id", "why"),
            told("follow_up", "visit_id", "kind"),
            kept("visit_task", "visit_id", "wording_*"),
            kept("task_outcome", "visit_id", "outcome"),
            kept("part_used", "visit_id", "part_code"),
            kept("photo", "visit_id", "caption")),
    INVOICES(
            "invoice",
            "id",
            "kind",
            told("invoice_issue", "invoice_id", "label"),
            told("invoice_discard", "invoice_id", "why"),
            told("invoice_line", "invoice_id", "words_*"),
            told("payment_allocation", "invoice_id", "amount_minor"),
            told("write_off", "invoice_id", "amount_minor"),
            told("instalment_lessening", "invoice_id", "amount_minor")),
    PAYMENTS(
            "payment",
            "id",
            "amount_minor",
            told("payment_undoing", "payment_id", "how"),
            told("deposit", "payment_id", "words"),
            told("payment_allocation", "payment_id", "amount_minor")),
    PARTS("part", "code", "name_*"),
    PEOPLE(
            "membership",
            "person_id",
            "name",
            told("ticket", "person_id", "kind"),
            told("roster_hours", "person_id", "weekday"),
            told("day_off", "person_id", "day"),
            told("technician_base", "person_id", "address")),
    PRICES(
            "price",
            "",
            "item_code",
            told("mark_up", "", "scope"),
            told("labour_terms", "", "valid_from"),
            told("travel_zone", "", "code")),
    TAXES("own_tax", "", "label_*", told("tax_confirmation", "", "source")),
    FEES(
            "fee",
            "",
            "region",
            told("reminder_way", "", "how"),
            told("reminder_step", "", "subject_*"),
            told("serving_rule", "", "what")),
    COSTS("running_cost", "", "valid_from"),
    BUSINESS(
            "business_profile",
            "",
            "street",
            told("numbering", "", "kind"),
            told("answer_time", "", "urgency"),
            told("on_call", "", "from_day"),
            told("task_need", "", "task_code")),
    SEASONS("season", "", "name_*"),
    INTERVALS("own_interval", "", "task_code", told("accepted_chance", "", "percent")),
    KINDS("own_kind", "", "code", told("own_task", "", "code"));

    /**
     * Rows that hang on the record.
     *
     * @param by the column that names the record, empty where the whole list is read
     * @param label the column that tells one from another; an asterisk stands for the reader's language
     * @param entered whether it is told that such a row was written later than the record itself
     */
    record Hanging(String table, String by, String label, boolean entered) {}

    private final String table;
    private final String key;
    private final String label;
    private final List<Hanging> parts;

    Recorded(String table, String key, String label, Hanging... parts) {
        this.table = table;
        this.key = key;
        this.label = label;
        this.parts = List.of(parts);
    }

    private static Hanging told(String table, String by, String label) {
        return new Hanging(table, by, label, true);
    }

    private static Hanging kept(String table, String by, String label) {
        return new Hanging(table, by, label, false);
    }

    String table() {
        return table;
    }

    /** The column that the address names; empty for a whole list. */
    String key() {
        return key;
    }

    String label() {
        return label;
    }

    List<Hanging> parts() {
        return parts;
    }

    boolean isList() {
        return key.isEmpty();
    }
}
