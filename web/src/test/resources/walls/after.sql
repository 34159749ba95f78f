-- After the walk: one row in every table that it did not come by.
insert into own_kind (code, body) values ('own-fan',
  '{"code": "own-fan", "wording": {"en": "Fan", "fr": "Ventilateur"}, "fits": [], "nameplate": []}');
insert into own_task (code, body) values ('own-look',
  '{"code": "own-look", "kinds": ["own-fan"], "wording": {"en": "Look at the fan", "fr": "Regarder le ventilateur"}, "who": "technician", "ticket": "none", "minutes": 5, "cadence": {"how": "every-months", "months": 12, "min": 9, "max": 15}, "basis": "common practice"}');
with bytes as (
  insert into photo_bytes (sha256, kept_sha256, media_type, width, height, bytes)
  values (encode(sha256(current_tenant()::text::bytea), 'hex'), repeat('0', 64), 'image/jpeg', 1, 1, '\xffd8ffe000104a46494600010100000100010000ffdb004300100b0c0e0c0a100e0d0e1211101318281a181616183123251d283a333d3c3933383740485c4e404457453738506d51575f626768673e4d71797064785c656763ffc0000b080001000101011100ffc40014000100000000000000000000000000000007ffc40014100100000000000000000000000000000000ffda0008010100003f00407fffd9')
  returning sha256)
insert into photo (id, visit_id, sha256) select uuidv7(), (select id from visit order by id desc limit 1), sha256 from bytes;
with run as (insert into billing_run (day, drafts, batches) values ('2026-11-25', 1, 1) returning id)
insert into billing_run_end (run_id, how) select id, 'done' from run;
