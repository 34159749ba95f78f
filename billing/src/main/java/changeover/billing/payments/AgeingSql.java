package changeover.billing.payments;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * The age of what is owed, counted from the day it was to be paid: not due yet, 1 to 30 days late, 31 to 60, 61 to 90,
 * and more. A customer's credit is what they paid beyond what they owe. What is owed from before the take-over ages beside the
 * documents.
 */
final class AgeingSql {

    /** What a customer owes less what they have paid, after {@link OpenSql#OPEN}; below nought for a credit. */
    static final String BALANCE = """
            , moved as (
              select customer_id, sum(case kind when 'credit' then -total_minor else total_minor end) as minor
                from invoice_issue where day <= ?::date group by customer_id
              union all
              select p.customer_id, sum(case p.kind when 'payment' then -p.amount_minor else p.amount_minor end)
                from payment p
                left join payment_undoing u
                  on u.tenant_id = p.tenant_id and u.payment_id = p.id and u.day <= ?::date
               where p.day <= ?::date and u.id is null group by p.customer_id
              union all
              select s.customer_id, -sum(w.amount_minor) from write_off w
                join invoice_issue s on s.tenant_id = w.tenant_id and s.invoice_id = w.invoice_id
               where w.day <= ?::date group by s.customer_id
              union all
              select o.customer_id, sum(o.amount_minor) from opening_balance o where %s <= ?::date group by o.customer_id),
            balance as (select customer_id, sum(minor)::bigint as minor from moved group by customer_id)
            """.formatted(OpenedBefore.BOOKED);

    /** What is open of a customer's documents, after {@link #BALANCE}. */
    static final String DOCUMENTED = """
            , documented as (select customer_id, sum(open_minor) as open from item group by customer_id)
            """;

    /** How often the balance asks for the day. */
    static final int BALANCE_DAYS = 5;

    /** How often the day is asked for, after the days of {@link OpenSql#OPEN}. */
    static final int DAYS = BALANCE_DAYS + 2 * (Age.values().length + 1) + 1;

    private static final String LATE = "open_minor > 0 and ?::date - due_day ";

    private AgeingSql() {}

    static String of(boolean oneCustomer, boolean together) {
        String ages = Arrays.stream(Age.values()).map(AgeingSql::open).collect(Collectors.joining(", "));
        String balances = BALANCE + """
                , aged as (
                  select customer_id, count(*) filter (where open_minor > 0) as documents,
                         coalesce(sum(open_minor), 0)::bigint as open, %s,
                         count(*) filter (where %s> 0) as late_documents,
                         min(due_day) filter (where open_minor > 0) as oldest
                    from item group by customer_id),
                customer_row as (
                  select b.customer_id, c.name, coalesce(a.documents, 0) + coalesce(o.documents, 0) as documents,
                         coalesce(a.open, 0) + coalesce(o.open, 0) as open, %s,
                         coalesce(a.late_documents, 0) + coalesce(o.late_documents, 0) as late_documents,
                         least(a.oldest, o.oldest) as oldest,
                         greatest(0, coalesce(a.open, 0) - b.minor) as credit,
                         greatest(0, b.minor - coalesce(a.open, 0) - coalesce(o.open, 0)) as beyond
                    from balance b
                    left join aged a on a.customer_id = b.customer_id
                    left join customer c on c.id = b.customer_id
                    left join lateral (
                      select count(*) filter (where open_minor > 0) as documents,
                             coalesce(sum(open_minor), 0)::bigint as open, %s,
                             count(*) filter (where %s> 0) as late_documents,
                             min(due_day) filter (where open_minor > 0) as oldest
                        from (%s) before_item) o on true)
                """.formatted(ages, LATE, together(), ages, LATE, OpenedBefore.OF_A_CUSTOMER);
        String where = oneCustomer ? " where customer_id = ?" : " where open > 0 or credit > 0 or beyond > 0";
        return balances + (together ? TOGETHER + where : EACH + where + " order by oldest nulls last, name");
    }

    private static String together() {
        return Arrays.stream(Age.values())
                .map(age -> age.name().toLowerCase(Locale.ROOT))
                .map(age -> "coalesce(a.%1$s, 0) + coalesce(o.%1$s, 0) as %1$s".formatted(age))
                .collect(Collectors.joining(", "));
    }

    private static String open(Age age) {
        return "coalesce(sum(open_minor) filter (where %sbetween %s and %s), 0)::bigint as %s"
                .formatted(LATE, age.least(), age.most(), age.name().toLowerCase(Locale.ROOT));
    }

    private static final String EACH = """
            select customer_id, name, 1, documents, open, not_due, late_30, late_60, late_90, older, late_documents,
                   oldest, credit, beyond from customer_row""";

    private static final String TOGETHER = """
            select null::uuid, null::text, count(*) filter (where open > 0), coalesce(sum(documents), 0),
                   coalesce(sum(open), 0), coalesce(sum(not_due), 0), coalesce(sum(late_30), 0),
                   coalesce(sum(late_60), 0), coalesce(sum(late_90), 0), coalesce(sum(older), 0),
                   coalesce(sum(late_documents), 0), min(oldest), coalesce(sum(credit), 0),
                   coalesce(sum(beyond), 0) from customer_row""";
}
