package changeover.web.session;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * Every list of the business as a table to take along: its own keys, days as ISO dates, money as decimals of the row's currency
 * (what is asked for as {@code _minor}). The homes with their machines have a file of their own that comes in again.
 */
public enum ListFile {
    CUSTOMERS("""
            select key as customer, name, language, phone, email, street, city, region, postal, country, invoices,
                   purchase_order, notes
              from customer order by name, key"""),

    PEOPLE_OF_HOMES("""
            select h.key as home, c.key as customer, p.part, p.from_day as "from", p.until_day - 1 as last, p.purchase_order
              from home_part p join home h on (h.tenant_id, h.id) = (p.tenant_id, p.home_id)
              join customer c on (c.tenant_id, c.id) = (p.tenant_id, p.customer_id)
             order by h.key, p.part, p.from_day"""),

    MACHINES("""
            select h.key as home, b.name as building, e.name as unit, e.kind, e.make, e.model, e.serial, e.location,
                   e.installed_on as installed, e.maker_warranty_until, e.labour_warranty_until, e.registration,
                   e.fits::text as fits, e.nameplate::text as nameplate, e.ended_on
              from equipment e left join home h on (h.tenant_id, h.id) = (e.tenant_id, e.home_id)
              left join building b on (b.tenant_id, b.id) = (e.tenant_id, e.building_id)
             order by h.key, b.name, e.position, e.name"""),

    PLANS("""
            select code, name_en, name_fr, visits, price_minor, currency, discount_percent,
                   instalments, included_minutes, on_sale_from, withdrawn_on from plan order by code"""),

    AGREEMENTS("""
            select a.number, h.key as home, s.key as signer, p.key as payer, a.plan_code as plan, a.term_from as "from",
                   a.term_until - 1 as last, a.price_minor, a.currency, a.instalments, a.visits,
                   a.offered_on, a.valid_until, y.day as accepted_on, y.by_name as accepted_by, e.day as ended_on,
                   e.why as ended_why, t.day as taken_over, t.paid_minor as paid_before_minor, t.last_visit
              from agreement a join home h on (h.tenant_id, h.id) = (a.tenant_id, a.home_id)
              join customer s on (s.tenant_id, s.id) = (a.tenant_id, a.signer_id)
              join customer p on (p.tenant_id, p.id) = (a.tenant_id, a.payer_id)
              left join agreement_acceptance y on (y.tenant_id, y.agreement_id) = (a.tenant_id, a.id)
              left join agreement_ending e on (e.tenant_id, e.agreement_id) = (a.tenant_id, a.id)
              left join agreement_taken_over t on (t.tenant_id, t.agreement_id) = (a.tenant_id, a.id)
             order by a.number"""),

    VISITS("""
            select v.id as visit, h.key as home, a.number as agreement, v.kind, v.window_from as "from",
                   v.window_until - 1 as last, v.minutes as minutes_planned, coalesce(p.day, w.day) as day, p.starts,
                   case when w.id is null then m.name end as technician,
                   e.how as ended, e.day as ended_on, e.why as ended_why, c.minutes, c.received_by, c.household_note,
                   r.name as partner
              from visit v join home h on (h.tenant_id, h.id) = (v.tenant_id, v.home_id)
              left join agreement a on (a.tenant_id, a.id) = (v.tenant_id, v.agreement_id)
              left join appointment p on (p.tenant_id, p.visit_id) = (v.tenant_id, v.id)
              left join closure c on (c.tenant_id, c.visit_id) = (v.tenant_id, v.id)
              left join membership m on (m.tenant_id, m.person_id) = (v.tenant_id, coalesce(c.technician_id, p.technician_id))
              left join visit_ending e on (e.tenant_id, e.visit_id) = (v.tenant_id, v.id)
              left join partner_visit w on (w.tenant_id, w.visit_id) = (v.tenant_id, v.id) and not exists (
                select from partner_visit_end z where (z.tenant_id, z.given_id) = (w.tenant_id, w.id))
              left join partner r on (r.tenant_id, r.id) = (w.tenant_id, w.partner_id)
             order by v.window_from, h.key, v.id"""),

    TASKS("""
            select t.visit_id as visit, h.key as home, q.name as unit, t.task_code as task, t.who, t.minutes,
                   t.due_from as "from", t.due_until - 1 as last, o.outcome, o.reason
              from visit_task t join visit v on (v.tenant_id, v.id) = (t.tenant_id, t.visit_id)
              join home h on (h.tenant_id, h.id) = (v.tenant_id, v.home_id)
              left join equipment q on (q.tenant_id, q.id) = (t.tenant_id, t.equipment_id)
              left join task_outcome o on (o.tenant_id, o.visit_task_id) = (t.tenant_id, t.id)
             order by v.window_from, t.visit_id, t.position"""),

    DONE("""
            select h.key as home, q.name as unit, u.task_code as task, u.day, coalesce(x.name, m.name) as technician,
                   u.visit_id as visit
              from unit_history u join home h on (h.tenant_id, h.id) = (u.tenant_id, u.home_id)
              left join equipment q on (q.tenant_id, q.id) = (u.tenant_id, u.equipment_id)
              left join membership m on (m.tenant_id, m.person_id) = (u.tenant_id, u.technician_id)
              left join partner_visit_done d on (d.tenant_id, d.visit_id) = (u.tenant_id, u.visit_id)
              left join partner x on (x.tenant_id, x.id) = (d.tenant_id, d.partner_id)
             order by u.day, h.key, u.task_code"""),

    TO_BE_READ("""
            select h.key as home, q.name as unit, u.task_code as task, 'to be read' as day
              from last_time_unread u join home h on (h.tenant_id, h.id) = (u.tenant_id, u.home_id)
              join equipment q on (q.tenant_id, q.id) = (u.tenant_id, u.equipment_id)
             order by h.key, q.name, u.task_code"""),

    READINGS("""
            select r.visit_id as visit, h.key as home, q.name as unit, r.code, r.entered_value as entered,
                   r.entered_unit, r.value, r.unit as value_unit, r.standing, r.day
              from reading r join home h on (h.tenant_id, h.id) = (r.tenant_id, r.home_id)
              left join equipment q on (q.tenant_id, q.id) = (r.tenant_id, r.equipment_id)
             order by r.day, r.visit_id, r.code"""),

    FINDINGS("""
            select f.visit_id as visit, h.key as home, q.name as unit, f.level, f.text, f.told_to, f.answer, f.day,
                   f.cleared_on, f.cleared_why
              from finding f join home h on (h.tenant_id, h.id) = (f.tenant_id, f.home_id)
              left join equipment q on (q.tenant_id, q.id) = (f.tenant_id, f.equipment_id)
             order by f.day, h.key"""),

    CALLS("""
            select h.key as home, coalesce(x.caller, c.caller) as caller,
                   case when x.id is null then c.phone else x.phone end as phone, c.rang_at,
                   coalesce(x.trouble, c.trouble) as trouble, coalesce(x.words, c.words) as words,
                   coalesce(x.heat, c.heat) as heat, array_to_string(coalesce(x.risks, c.risks), ' ') as risks,
                   coalesce(x.promised_by, c.promised_by) as promised_by, o.how as became, o.why, o.at as answered_at,
                   o.visit_id as visit
              from call c join home h on (h.tenant_id, h.id) = (c.tenant_id, c.home_id)
              left join call_outcome o on (o.tenant_id, o.call_id) = (c.tenant_id, c.id)
              left join lateral (select * from call_correction r where (r.tenant_id, r.call_id) = (c.tenant_id, c.id)
                order by r.id desc limit 1) x on true order by c.rang_at"""),

    ESTIMATES("""
            select o.label as number, h.key as home, p.key as customer, e.words, e.written_on, e.valid_until, o.day as offered_on,
                   o.subtotal_minor, o.tax_minor as taxes_minor,
                   o.total_minor, e.currency, a.how as answer, a.by_name as answered_by,
                   a.at as answered_at
              from estimate e join home h on (h.tenant_id, h.id) = (e.tenant_id, e.home_id)
              join customer p on (p.tenant_id, p.id) = (e.tenant_id, e.customer_id)
              left join estimate_offer o on (o.tenant_id, o.estimate_id) = (e.tenant_id, e.id)
              left join estimate_answer a on (a.tenant_id, a.estimate_id) = (e.tenant_id, e.id) and a.undone_at is null
             order by e.written_on, o.number"""),

    PART_ORDERS("""
            select o.visit_id as visit, h.key as home, o.part_code as part, o.quantity, o.supplier, o.ordered_on, o.expected_on,
                   o.words,
                   (select sum(a.quantity) from part_arrival a where (a.tenant_id, a.order_id) = (o.tenant_id, o.id)) as arrived
              from part_order o join home h on (h.tenant_id, h.id) = (o.tenant_id, o.home_id)
             order by o.ordered_on, o.part_code"""),

    STOCK("""
            select p.name as place, p.kind as place_kind, m.part_code as part, sum(m.quantity) as quantity
              from stock_movement m join stock_place p on (p.tenant_id, p.id) = (m.tenant_id, m.place_id)
             group by p.name, p.kind, m.part_code having sum(m.quantity) <> 0 order by p.name, m.part_code"""),

    INVOICES("""
            select i.label as number, i.kind, c.key as customer, h.key as home, i.day, i.due_day, k.label as credits,
                   i.subtotal_minor, i.tax_minor as taxes_minor,
                   i.total_minor, i.currency, i.purchase_order
              from invoice_issue i join customer c on (c.tenant_id, c.id) = (i.tenant_id, i.customer_id)
              left join home h on (h.tenant_id, h.id) = (i.tenant_id, i.home_id)
              left join invoice_issue k on (k.tenant_id, k.invoice_id) = (i.tenant_id, i.credits_id)
             order by i.day, i.series, i.number"""),

    PAYMENTS("""
            select p.day, p.kind, c.key as customer, p.way, p.amount_minor, p.currency, p.reference,
                   p.note, u.day as undone_on, u.how as undone_how
              from payment p join customer c on (c.tenant_id, c.id) = (p.tenant_id, p.customer_id)
              left join payment_undoing u on (u.tenant_id, u.payment_id) = (p.tenant_id, p.id)
             order by p.day, p.id"""),

    OPENINGS("""
            select c.key as customer, 'owed' as kind, o.since, o.amount_minor, o.currency, o.words
              from opening_balance o join customer c on (c.tenant_id, c.id) = (o.tenant_id, o.customer_id)
            union all
            select c.key, 'prepaid', p.day, p.amount_minor, p.currency, p.note
              from payment p join customer c on (c.tenant_id, c.id) = (p.tenant_id, p.customer_id)
             where p.way = 'before' and not exists (
               select from payment_undoing u where (u.tenant_id, u.payment_id) = (p.tenant_id, p.id))
             order by 2, 3, 1"""),

    WHAT_PAYMENTS_PAY("""
            select i.label as number, a.day, a.amount_minor, p.currency, p.day as paid_on, p.way, p.reference
              from payment_allocation a join payment p on (p.tenant_id, p.id) = (a.tenant_id, a.payment_id)
              join invoice_issue i on (i.tenant_id, i.invoice_id) = (a.tenant_id, a.invoice_id)
             order by a.day, i.label""");

    private final String sql;

    ListFile(String sql) {
        this.sql = sql;
    }

    String sql() {
        return sql;
    }

    /** As its address and its file name it: {@code part-orders}. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static Optional<ListFile> of(String code) {
        return Arrays.stream(values()).filter(list -> list.code().equals(code)).findFirst();
    }
}
