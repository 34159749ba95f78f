-- The rate of a fee is confirmed like any other.
alter table tax_confirmation drop constraint tax_confirmation_work_check,
  add constraint tax_confirmation_work_check check (work in ('any', 'maintenance', 'repair', 'installation', 'fee'));
