-- Somebody with a sign-in of their own is asked first: no door opens by their place until they have said yes.
-- Those who were here before, and those whose sign-in was made for them, were never asked: both days are missing.

alter table membership
  add column asked_on date,
  add column joined_on date,
  add constraint only_who_was_asked_says_yes check (joined_on is null or asked_on is not null);
