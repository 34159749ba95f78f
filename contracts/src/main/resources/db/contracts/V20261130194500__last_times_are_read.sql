-- What it takes at the first visit to read on one machine when its work was last done.
alter table take_over add column reading_minutes int not null default 5
  constraint reading_takes_a_while check (reading_minutes between 0 and 120);
