-- A line knows which version of a visit's closure it charges, so that what the plan has given is counted once.
alter table invoice_line add column visit_version int;
alter table invoice_line alter column quantity type numeric(14, 4);
