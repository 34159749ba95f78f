-- Papers begin with the same colours and typefaces, three quarters of their bytes. A business keeps each such start once, and a paper
-- names the start that goes before its own bytes; papers that were kept whole stay whole.
create table paper_start (
  tenant_id uuid not null default current_tenant() references business (id),
  id uuid not null default uuidv7(),
  sha256 bytea not null check (length(sha256) = 32),
  bytes bytea not null check (length(bytes) > 0),
  primary key (tenant_id, id),
  constraint paper_start_kept_once unique (tenant_id, sha256)
);
-- The bytes are packed already.
alter table paper_start alter column bytes set storage external;
call owned('paper_start');
revoke update, delete on paper_start from ${app};
create trigger document_never_changes before update or delete on paper_start
  for each row execute function keep_document();
create trigger document_is_never_emptied before truncate on paper_start
  for each statement execute function keep_document();

-- Nobody takes what follows a start for the paper.
alter table document rename column bytes to own_bytes;
alter table document add column start_sha256 bytea check (length(start_sha256) = 32);
alter table document add constraint document_begins_with
  foreign key (tenant_id, start_sha256) references paper_start (tenant_id, sha256);

-- A start must not alter what is kept of the whole: the mark of a paper is that of its start and its own bytes together.
create function paper_bytes(paper document) returns bytea language sql stable as $$
  select case when paper.start_sha256 is null then paper.own_bytes
              else (select s.bytes from paper_start s
                     where s.tenant_id = paper.tenant_id and s.sha256 = paper.start_sha256) || paper.own_bytes end
$$;
