-- What the work of an estimate is and how its price was agreed, which decide its taxes and those of the visit that does it.
alter table estimate
  add column work text not null default 'repair' check (work in ('maintenance', 'repair', 'installation')),
  add column contract_form text not null default 'separate' check (contract_form in ('separate', 'lump_sum'));
