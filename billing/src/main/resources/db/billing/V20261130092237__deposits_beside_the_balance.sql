-- A deposit is the customer's money until it is applied: a statement says it beside what is to pay.
alter table account_statement add column deposits_minor bigint not null default 0 check (deposits_minor >= 0);
