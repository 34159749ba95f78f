package changeover.billing.ledger;

import changeover.billing.ABusiness;
import changeover.billing.invoices.Drafts;
import changeover.billing.invoices.Invoices;
import changeover.billing.invoices.SomeDrafts;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;

/** An agreement for 249.00 as rows, with visits, parts and documents as a test wants them. */
@ApplicationScoped
public class ASoldPlan {

    public static final LocalDate FIRST = LocalDate.of(2026, 4, 1);
    private static final AtomicInteger NUMBER = new AtomicInteger(7000);

    @Inject
    ABusiness business;

    @Inject
    Drafts drafts;

    @Inject
    Invoices invoices;

    /** @param id of the agreement */
    public record Sold(UUID id, UUID home, UUID customer) {}

    /** Inside the business: a year from the first of April, with so many ready minutes and filters. */
    public Sold of(String name, int readyMinutes, int filters) {
        UUID customer = business.customer(name);
        return of(customer, business.home(customer, "QC"), FIRST, readyMinutes, filters);
    }

    /** The same for a customer and a home that are there, a year from the day. */
    Sold of(UUID customer, UUID home, LocalDate from, int readyMinutes, int filters) {
        UUID plan = UUID.randomUUID();
        UUID id = UUID.randomUUID();
        int number = NUMBER.incrementAndGet();
        business.execute("insert into plan (id, code, name_en, name_fr, visits, price_minor, currency) values ('" + plan
                + "', 'confort-" + number + "', 'Comfort', 'Confort', 2, 24900, 'CAD')");
        business.execute("insert into agreement (id, number, home_id, signer_id, payer_id, plan_id, plan_code,"
                + " plan_name_en, plan_name_fr, term_from, term_until, price_minor, currency, instalments, visits,"
                + " discount_percent, included_minutes, language, offered_on, valid_until) values ('" + id + "', "
                + number + ", '" + home + "', '" + customer + "', '" + customer + "', '" + plan
                + "', 'confort', 'Comfort', 'Confort', '" + from + "', '" + from.plusYears(1)
                + "', 24900, 'CAD', 1, 2, 10, " + readyMinutes + ", 'fr', '" + from + "', '" + from + "')");
        business.execute("insert into agreement_acceptance (agreement_id, day, by_name, channel) values ('" + id
                + "', '" + from + "', 'Ida Roe', 'counter')");
        if (filters > 0) {
            business.execute("insert into agreement_part (agreement_id, part_kind, quantity) values ('" + id
                    + "', 'filter', " + filters + ")");
        }
        return new Sold(id, home, customer);
    }

    /** A plan's visit with one task of so many minutes; its answer is another visit's, or null. */
    public UUID visit(Sold sold, String kind, int minutes, UUID answers) {
        return visit(sold, kind, minutes, answers, FIRST);
    }

    /** The same with its window from a day on. */
    UUID visit(Sold sold, String kind, int minutes, UUID answers, LocalDate from) {
        UUID visit = UUID.randomUUID();
        business.execute("insert into visit (id, home_id, agreement_id, kind, window_from, window_until, minutes,"
                + " answers_id) values ('" + visit + "', '" + sold.home() + "', '" + sold.id() + "', '" + kind
                + "', '" + from + "', '" + from.plusMonths(2) + "', " + minutes + ", "
                + (answers == null ? "null" : "'" + answers + "'")
                + ")");
        business.execute("insert into visit_task (visit_id, task_code, wording_en, wording_fr, who, minutes, due_from,"
                + " due_until, reason_en, reason_fr, basis) values ('" + visit
                + "', 'coil', 'Coil', 'Serpentin', 'technician', " + minutes
                + ", '2026-04-01', '2026-06-01', 'Plan', 'Formule', 'maker')");
        return visit;
    }

    /** @param outcome done or deferred */
    public void closed(Sold sold, UUID visit, LocalDate day, String outcome) {
        business.execute("insert into closure (visit_id, home_id, technician_id, day, minutes, minutes_planned,"
                + " extra_minutes, received_by, closed_at) values ('" + visit + "', '" + sold.home() + "', '"
                + UUID.randomUUID() + "', '" + day + "', 60, 60, 0, 'Ida Roe', '" + day + "T12:00:00Z')");
        business.execute("insert into task_outcome (id, visit_id, visit_task_id, outcome, reason) select uuidv7(), '"
                + visit + "', id, '" + outcome + "', " + (outcome.equals("done") ? "null" : "'No ladder'")
                + " from visit_task where visit_id = '" + visit + "'");
    }

    /** The draft of a document about the plan. */
    UUID draft(Sold sold, LocalDate day, int instalment, String net) {
        return drafts.write(
                        List.of(SomeDrafts.instalment(day, sold.customer(), sold.home(), sold.id(), instalment, net)))
                .getFirst();
    }

    /** Twelve instalments of 20.75, of which the first four were asked for. */
    void instalments(Sold sold) {
        for (int number = 1; number <= 12; number++) {
            LocalDate day = FIRST.plusMonths(number - 1);
            if (number <= 4) {
                invoiced(sold, day, number, "20.75");
            } else {
                draft(sold, day, number, "20.75");
            }
        }
    }

    public UUID invoiced(Sold sold, LocalDate day, int instalment, String net) {
        UUID draft = draft(sold, day, instalment, net);
        invoices.issue(draft, day);
        return draft;
    }

    /** Filters that the plan gave at a visit. */
    public void filters(Sold sold, UUID visit, LocalDate day, int count) {
        UUID invoice = UUID.randomUUID();
        business.execute("insert into invoice (id, kind, customer_id, home_id, visit_id, visit_version, language,"
                + " currency, may_issue_from, due_days, subtotal_minor) values ('" + invoice + "', 'visit', '"
                + sold.customer() + "', '" + sold.home() + "', '" + visit + "', 1, 'fr', 'CAD', '" + day
                + "', 30, 0)");
        business.execute(
                "insert into invoice_line (invoice_id, position, home_id, agreement_id, visit_id, visit_version,"
                        + " day, kind, item_code, part_kind, coverage, work, contract_form, words_en, words_fr, why_en, why_fr,"
                        + " quantity, unit, unit_price_minor, net_minor) values ('" + invoice + "', 1, '" + sold.home()
                        + "', '"
                        + sold.id() + "', '" + visit + "', 1, '" + day
                        + "', 'part', 'f-16', 'filter', 'included', 'maintenance', 'separate', 'Filter', 'Filtre', 'Plan',"
                        + " 'Formule', " + count + ", 'C62', 0, 0)");
    }

    /** The agreement ends in mid-term. */
    public void ends(Sold sold, LocalDate day) {
        business.execute("insert into agreement_ending (agreement_id, day, why) values ('" + sold.id() + "', '" + day
                + "', 'moved')");
    }

    /** Each way of settling it, with what it keeps, gives back and still bills. */
    static List<String> ways(Settlement settlement) {
        return settlement.ways().stream()
                .map(way -> way.way().code() + (way.chosen() ? "*" : "") + " keep "
                        + way.kept().decimal() + " credit "
                        + way.credit().decimal() + " total "
                        + way.total().decimal() + " back "
                        + way.giveBack().decimal() + " bill "
                        + way.stillToBill().decimal())
                .toList();
    }
}
