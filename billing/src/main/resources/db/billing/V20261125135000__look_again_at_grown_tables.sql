-- On a young installation a billing run outgrows what the planner knows long before the autovacuum comes by, and plans made
-- for empty tables then read a business's every row for each document. Whoever writes many rows asks the planner to look
-- again at the tables that have more than doubled; only one at a time does.
create function look_again_at_billing() returns void language plpgsql security definer
  set search_path = pg_catalog, public as $$
declare
  grown regclass;
begin
  for grown in
    select c.oid from pg_class c
     where c.oid = any (array['invoice', 'invoice_line', 'invoice_tax', 'invoice_issue', 'payment', 'payment_allocation',
                              'document', 'document_order', 'outbox', 'outbox_attachment']::regclass[])
       and pg_relation_size(c.oid) / 8192 > greatest(c.relpages, 0) * 2 + 8
     order by c.oid
  loop
    if pg_try_advisory_xact_lock(hashtextextended('look_again', grown::oid::bigint)) then
      execute format('analyze %s', grown);
    end if;
  end loop;
end $$;
revoke execute on function look_again_at_billing() from public;
grant execute on function look_again_at_billing() to ${app};
