package changeover.scheduling.visits;

/**
 * A visit that a partner makes is on nobody's day here and waits for none: no planner sees it. What it is to a statement
 * that knows the visit as {@code v}.
 */
public final class GivenOut {

    /** The visit as it is with a partner now, {@code w}, and the partner, {@code p}; missing for every other. */
    public static final String JOINED = """
             left join partner_visit w on w.tenant_id = v.tenant_id and w.visit_id = v.id and not exists (
               select 1 from partner_visit_end z where z.tenant_id = w.tenant_id and z.given_id = w.id)
             left join partner p on p.tenant_id = w.tenant_id and p.id = w.partner_id
            """;

    /** Whether no partner has it. */
    public static final String NOT = """
             not exists (select 1 from partner_visit w where w.tenant_id = v.tenant_id and w.visit_id = v.id and not exists (
               select 1 from partner_visit_end z where z.tenant_id = w.tenant_id and z.given_id = w.id))
            """;

    private GivenOut() {}
}
