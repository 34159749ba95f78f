-- What of a document money that was kept for the customer would have paid: the letter asked for the rest.
alter table reminder_item add column kept_minor bigint not null default 0
  constraint a_reminder_leaves_out_a_part check (kept_minor >= 0 and kept_minor <= open_minor);
