-- A form posted after its session had ended, kept sealed until its writer has signed in again. Unowned: the business is
-- not known to be theirs yet. It is read once, by its unguessable id, and thrown away after a day.
create table kept_form (
  id uuid primary key,
  sealed bytea not null,
  kept_at timestamptz not null default now()
);
grant select, insert, delete on kept_form to ${lookup};

-- What an asker was answered, by the id of the operation: asked again, the same answer and no second deed.
create table given_answer (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null,
  request_digest bytea not null,
  status int not null,
  body text not null,
  location text,
  primary key (tenant_id, id)
);
call owned('given_answer');
