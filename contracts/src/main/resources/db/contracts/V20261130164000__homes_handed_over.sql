-- A home changes hands: sold, or let to somebody else while the payer stays. An agreement that follows has another signer and
-- payer from that day on; what was issued before stays with whoever got it. A key that was given back is in our hands no more.
create table home_handover (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  home_id uuid not null,
  kind text not null check (kind in ('sold', 'let')),
  customer_id uuid not null,
  day date not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, home_id) references home (tenant_id, id),
  foreign key (tenant_id, customer_id) references customer (tenant_id, id)
);
call owned('home_handover');
create index home_handover_of_a_home on home_handover (tenant_id, home_id);

create table agreement_takeover (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  agreement_id uuid not null,
  day date not null,
  was_signer_id uuid not null,
  was_payer_id uuid not null,
  customer_id uuid not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, agreement_id) references agreement (tenant_id, id),
  foreign key (tenant_id, was_signer_id) references customer (tenant_id, id),
  foreign key (tenant_id, was_payer_id) references customer (tenant_id, id),
  foreign key (tenant_id, customer_id) references customer (tenant_id, id),
  constraint an_agreement_is_taken_over_once_a_day unique (tenant_id, agreement_id, day)
);
call owned('agreement_takeover');

create table key_return (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  home_id uuid not null,
  kind text not null check (kind in ('key', 'code', 'alarm')),
  label text not null default '',
  given_to text not null check (given_to <> ''),
  day date not null,
  primary key (tenant_id, id),
  foreign key (tenant_id, home_id) references home (tenant_id, id)
);
call owned('key_return');
create index key_return_of_a_home on key_return (tenant_id, home_id);
revoke update, delete on home_handover, agreement_takeover, key_return from ${app};
