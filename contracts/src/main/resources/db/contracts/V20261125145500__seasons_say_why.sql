-- What a business's own days rest on; a season that stands as it was shipped needs no reason.
alter table season add column basis text check (basis <> '');
