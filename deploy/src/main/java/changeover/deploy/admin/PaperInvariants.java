package changeover.deploy.admin;

import java.util.List;

/** What was sent: every issued document is drawn or ordered, kept as it was drawn, and told to somebody once. */
final class PaperInvariants {
    static final List<Invariant> ALL = List.of(
            new Invariant("papers-drawn", "document_order", """
                    select count(*), count(*) filter (where not exists (
                            select 1 from document d where d.tenant_id = s.tenant_id and d.of_id = s.invoice_id)
                        and not exists (
                            select 1 from document_order o where o.tenant_id = s.tenant_id and o.of_id = s.invoice_id))
                      from invoice_issue s"""),
            new Invariant("papers-kept", "document", """
                    select count(*), count(*) filter (where sha256(paper_bytes(d)) is distinct from sha256) from document d"""),
            new Invariant("mail-once", "outbox", """
                    select coalesce(sum(n), 0)::bigint, count(*) filter (where n > 1)
                      from (select count(*) as n from outbox
                             group by tenant_id, kind, about_id, about_version, customer_id, way) o"""),
            new Invariant("mail-complete", "outbox_attachment", """
                    select count(*), count(*) filter (where o.sent_at is not null and not exists (
                        select 1 from document d
                         where d.tenant_id = a.tenant_id and d.of_kind = a.of_kind and d.of_id = a.of_id
                           and d.version = a.version))
                      from outbox_attachment a join outbox o on o.tenant_id = a.tenant_id and o.id = a.outbox_id"""));

    private PaperInvariants() {}
}
