-- A line that a later visit took up for one that was put off: the same promise, kept once.
alter table visit_task add column put_off_id uuid;
alter table visit_task add foreign key (tenant_id, put_off_id) references visit_task (tenant_id, id);
create index visit_task_taken_up on visit_task (tenant_id, put_off_id) where put_off_id is not null;
