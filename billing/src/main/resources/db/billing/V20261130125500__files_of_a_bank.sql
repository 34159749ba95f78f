-- Which file a line came in, so that a wrong one can be taken back; lines of which something was said stay.
create table bank_file (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  bank_id uuid not null,
  name text not null check (length(name) <= 100),
  primary key (tenant_id, id),
  foreign key (tenant_id, bank_id) references bank (tenant_id, id)
);
call owned('bank_file');
revoke update, delete on bank_file from ${app};

alter table bank_line add column file_id uuid,
  add foreign key (tenant_id, file_id) references bank_file (tenant_id, id);
create index bank_line_of_file on bank_line (tenant_id, file_id) where file_id is not null;
grant delete on bank_line to ${app};
