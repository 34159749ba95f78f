-- A closure may wait once more: a correction that adds something grave is looked over although the rest was. The version says which.
alter table review_hold add column version int not null default 1 check (version >= 1);
alter table review_hold drop constraint a_closure_waits_once;
alter table review_hold add constraint a_closure_waits_once unique (tenant_id, visit_id, version);
