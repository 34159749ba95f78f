-- How long a visit may be when a year is laid: the business's own bound; null for as long as its work.
alter table business_profile add column visit_minutes_at_most int check (visit_minutes_at_most between 30 and 600);
