-- A reading that needs warm air is put off because it is cold, or for something else; before, nobody was asked.
alter table task_outcome add column cause text constraint cold_or_something_else check (cause in ('cold', 'other'));
