-- A kind or a task of the business's own may be withdrawn: what is of it or was promised stays, nothing new is.
alter table own_kind add column withdrawn_on date;
alter table own_task add column withdrawn_on date;
