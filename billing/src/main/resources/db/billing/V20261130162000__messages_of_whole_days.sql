-- One message a customer about a day that moved, however many of their visits it holds.
create table whole_day_letter (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  whole_day_id uuid not null,
  customer_id uuid not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, whole_day_id) references whole_day (tenant_id, id),
  foreign key (tenant_id, customer_id) references customer (tenant_id, id),
  constraint one_letter_a_day_and_customer unique (tenant_id, whole_day_id, customer_id)
);
call owned('whole_day_letter');
revoke update, delete on whole_day_letter from ${app};
