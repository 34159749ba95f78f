-- Rows that people of the business itself may take back, as the trials of its own pages do.
insert into bank_line_dismissal (line_id, why)
  select id, 'The bank''s own' from bank_line where key = 'csv:2' on conflict do nothing;
insert into part_supplier (id, part_code, supplier) values (uuidv7(), 'pad-112', 'Tannery Supply') on conflict do nothing;
insert into part_minimum (id, part_code, place_id, quantity) select uuidv7(), 'pad-112', id, 2 from stock_place order by id limit 1
  on conflict do nothing;
insert into appointment (visit_id, technician_id, day, starts, ends)
  select v.id, m.person_id, '2099-08-03', '08:00', '09:00' from visit v, membership m
   where m.role = 'technician' and not exists (select 1 from appointment) limit 1;
insert into appointment_second (visit_id, technician_id, day, starts, ends)
  select a.visit_id, m.person_id, a.day, a.starts, a.ends from appointment a, membership m
   where m.role = 'office' and not exists (select 1 from appointment_second) limit 1;
update old_sheet set file = convert_to(E'Nom;Adresse;Ville\nMara Quill;9 Tannery Row;Port Ambrose\n', 'UTF8') where file is null;
insert into opening_balance (customer_id, since, amount_minor, currency, words) select id, '2026-01-02', 4500, 'CAD', 'Old invoice 88'
  from customer where not exists (select 1 from opening_balance) order by id limit 1;
insert into on_call (person_id, from_day, until_day) select person_id, '2099-07-01', '2099-07-08' from membership
  where not exists (select 1 from on_call) limit 1;
