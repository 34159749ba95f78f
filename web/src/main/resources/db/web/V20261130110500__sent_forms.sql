-- A page's form is done once: the id its rendering carried, who sent it, by which words, and where it led. Rows are thrown
-- away after a month.
create table sent_form (
  tenant_id uuid not null default current_tenant() references business (id),
  person_id uuid not null,
  id uuid not null,
  request_digest bytea not null,
  location text not null,
  primary key (tenant_id, person_id, id)
);
call owned('sent_form');
-- It is never changed, and what it led to keeps its own history.
drop trigger keep_what_it_said on sent_form;
create index sent_form_by_day on sent_form (tenant_id, made_at);
