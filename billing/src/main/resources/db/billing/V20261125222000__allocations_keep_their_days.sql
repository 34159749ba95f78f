-- What stands of a payment against a document is a sum of dated rows: money that a credit note sets free goes out again with
-- a row below nought on its own day, so that what was paid on an earlier day stays what it was.
alter table payment_allocation
  drop constraint one_allocation_a_document,
  drop constraint allocation_positive,
  add constraint allocation_moves check (amount_minor <> 0);
create index payment_allocation_of_payment on payment_allocation (tenant_id, payment_id, invoice_id);
