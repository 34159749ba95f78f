-- The ticket of one of the people is a paper like the business's own: with its file, told of in time, sent to who asks for it.
alter table business_paper drop constraint business_paper_kind_check,
  add constraint business_paper_kind_check check (kind in ('licence', 'insurance', 'bond', 'ticket', 'other')),
  add column person_id uuid,
  add foreign key (tenant_id, person_id) references membership (tenant_id, person_id),
  add constraint a_ticket_is_somebodys check ((kind = 'ticket') = (person_id is not null));
