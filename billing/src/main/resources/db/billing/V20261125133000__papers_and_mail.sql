-- Papers are made after the commit and kept once, as bytes that no entity maps; mail is written with the business and sent after it.

create table document (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  of_kind text not null check (of_kind in ('invoice', 'credit', 'report', 'offer', 'estimate', 'statement')),
  of_id uuid not null,
  version int not null default 1 check (version >= 1),
  media_type text not null check (media_type in ('application/pdf', 'application/xml')),
  file_name text not null check (file_name ~ '^[A-Za-z0-9][A-Za-z0-9._-]{0,119}$'),
  language char(2) not null check (language in ('en', 'fr')),
  sha256 bytea not null check (length(sha256) = 32),
  bytes bytea not null check (length(bytes) > 0),
  primary key (tenant_id, id),
  constraint document_made_once unique (tenant_id, of_kind, of_id, version, media_type)
);
-- The bytes are packed already.
alter table document alter column bytes set storage external;
call owned('document');
revoke update, delete on document from ${app};

create function keep_document() returns trigger language plpgsql as $$
begin
  raise exception 'a document never changes'
    using errcode = '23514', constraint = 'document_never_changes', table = tg_table_name;
end $$;
create trigger document_never_changes before update or delete on document
  for each row execute function keep_document();
create trigger document_is_never_emptied before truncate on document
  for each statement execute function keep_document();

-- Papers that are wanted and not made yet; a row goes when its document is there. It is a list of work, so what it said is not kept.
create table document_order (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  of_kind text not null check (of_kind in ('invoice', 'credit', 'report', 'offer', 'estimate', 'statement')),
  of_id uuid not null,
  version int not null default 1 check (version >= 1),
  attempts int not null default 0,
  next_try_at timestamptz not null default now(),
  last_error text,
  primary key (tenant_id, id),
  constraint document_ordered_once unique (tenant_id, of_kind, of_id, version)
);
call owned('document_order');
drop trigger keep_what_it_said on document_order;

-- A message to one customer. Its Message-ID is fixed when it is written, so that it is one message however often it is tried.
create table outbox (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  kind text not null check (kind <> ''),
  about_id uuid not null,
  about_version int not null default 1,
  customer_id uuid,
  home_id uuid,
  way text not null check (way in ('mail', 'letter')),
  message_id text not null check (message_id ~ '^<[^<>[:space:]]+@[^<>[:space:]]+>$'),
  to_name text not null,
  to_address text,
  to_postal text not null default '',
  language char(2) not null check (language in ('en', 'fr')),
  subject text not null constraint outbox_subject_is_one_line check (subject !~ '[\r\n]'),
  body text not null,
  attempts int not null default 0,
  next_try_at timestamptz not null default now(),
  last_error text,
  sent_at timestamptz,
  printed_at timestamptz,
  printed_by uuid,
  primary key (tenant_id, id),
  constraint outbox_message_once unique (tenant_id, message_id),
  constraint outbox_written_once unique nulls not distinct (tenant_id, kind, about_id, about_version, customer_id, way),
  constraint outbox_mail_has_an_address check (way = 'letter' or to_address is not null),
  constraint outbox_only_letters_are_printed check (printed_at is null or way = 'letter'),
  constraint outbox_only_mail_is_sent check (sent_at is null or way = 'mail')
);
call owned('outbox');
create index outbox_to_send on outbox (tenant_id, next_try_at) where sent_at is null and way = 'mail';
create index outbox_to_print on outbox (tenant_id, id) where printed_at is null and way = 'letter';
create index outbox_of_customer on outbox (tenant_id, customer_id);
create index outbox_about on outbox (tenant_id, about_id);

create table outbox_attachment (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  outbox_id uuid not null,
  of_kind text not null,
  of_id uuid not null,
  version int not null default 1,
  position int not null default 1,
  primary key (tenant_id, id),
  foreign key (tenant_id, outbox_id) references outbox (tenant_id, id),
  constraint outbox_attaches_once unique (tenant_id, outbox_id, of_kind, of_id, version)
);
call owned('outbox_attachment');
