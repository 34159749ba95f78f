package changeover.billing.invoices;

import changeover.billing.ABusiness;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;

/**
 * Agreements and visits as rows, for tests: the plan Confort includes two filters a term and 30 minutes, and takes 10 % off
 * the rest.
 */
@ApplicationScoped
class AnAgreement {

    private static final AtomicInteger NUMBER = new AtomicInteger();

    @Inject
    ABusiness business;

    UUID inForce(UUID home, UUID payer, LocalDate from, int instalments) {
        UUID plan = UUID.randomUUID();
        UUID id = UUID.randomUUID();
        int number = NUMBER.incrementAndGet();
        business.execute("insert into plan (id, code, name_en, name_fr, visits, price_minor, currency) values ('" + plan
                + "', 'confort-" + number + "', 'Comfort', 'Confort', 2, 24900, 'CAD')");
        business.execute("insert into agreement (id, number, home_id, signer_id, payer_id, plan_id, plan_code,"
                + " plan_name_en, plan_name_fr, term_from, term_until, price_minor, currency, instalments, visits,"
                + " discount_percent, included_minutes, language, offered_on, valid_until) values ('" + id + "', "
                + number + ", '" + home + "', '" + payer + "', '" + payer + "', '" + plan + "', 'confort', 'Comfort',"
                + " 'Confort', '" + from + "', '" + from.plusYears(1) + "', 24900, 'CAD', " + instalments
                + ", 2, 10, 30, 'fr', '" + from + "', '" + from + "')");
        business.execute(
                "insert into agreement_part (agreement_id, part_kind, quantity) values ('" + id + "', 'filter', 2)");
        business.execute("insert into agreement_acceptance (agreement_id, day, by_name, channel) values ('" + id
                + "', '" + from + "', 'Ida Roe', 'counter')");
        return id;
    }

    UUID visit(UUID home, @Nullable UUID agreement) {
        UUID id = UUID.randomUUID();
        business.execute(
                "insert into visit (id, home_id, agreement_id, kind, window_from, window_until, minutes) values ('"
                        + id + "', '" + home + "', " + (agreement == null ? "null" : "'" + agreement + "'")
                        + ", 'extra', '2026-04-01', '2026-06-01', 60)");
        return id;
    }

    void part(String code, String fits) {
        business.execute("insert into part (code, name_en, name_fr, unit, fits_key) values ('" + code + "', '" + code
                + "', '" + code + "', 'C62', '" + fits + "')");
    }
}
