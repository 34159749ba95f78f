-- Whoever was asked may also say no; the owner sees the day, and may ask again.
alter table membership
  add column declined_on date,
  add constraint only_who_is_asked_says_no check (declined_on is null or (asked_on is not null and joined_on is null));
