-- What came out and what went in, where the part carries a number: whoever stands before it reads it, and the maker asks for it.
alter table part_used
  add column old_serial text check (old_serial <> ''),
  add column new_serial text check (new_serial <> '');
