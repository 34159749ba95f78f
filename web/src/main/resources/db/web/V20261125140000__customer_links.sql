-- A customer's own way in: the digest of a secret that only the customer holds. Never deleted: who could read is kept.
create table customer_link (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  customer_id uuid not null,
  secret_digest bytea not null check (octet_length(secret_digest) = 32),
  expires_on date not null,
  revoked_on date,
  primary key (tenant_id, id),
  unique (tenant_id, secret_digest),
  foreign key (tenant_id, customer_id) references customer (tenant_id, id)
);
call owned('customer_link');
create index customer_link_of on customer_link (tenant_id, customer_id);
