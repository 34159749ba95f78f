package changeover.deploy.admin;

import java.util.List;

/** What waits for a review neither leaves nor is issued before somebody has said yes. */
final class ReviewInvariants {
    static final List<Invariant> ALL = List.of(new Invariant("reviews", "review_hold", """
                    select count(*), count(*) filter (where a.id is null and (
                        exists (select 1 from outbox o where o.tenant_id = r.tenant_id and o.about_id = r.visit_id
                           and o.kind = 'report' and coalesce(o.about_version, 1) >= r.version)
                        or exists (select 1 from invoice i
                            join invoice_issue s on s.tenant_id = i.tenant_id and s.invoice_id = i.id
                           where i.tenant_id = r.tenant_id and i.visit_id = r.visit_id and i.kind = 'visit'
                             and coalesce(i.visit_version, 1) >= r.version)))
                      from review_hold r
                      left join review_answer a on a.tenant_id = r.tenant_id and a.hold_id = r.id"""));

    private ReviewInvariants() {}
}
