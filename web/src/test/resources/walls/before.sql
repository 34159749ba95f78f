-- Before the walk through the year: what the crew may do, and where things stand.
insert into ticket (person_id, kind, number)
  select person_id, kind, 'T-1' from membership, unnest(array['refrigerant', 'gas', 'electrical']) kind
   where role = 'technician';
insert into building (name, street, city, region, country)
  select 'Tannery Court', street, city, region, country from home limit 1;
insert into equipment (building_id, kind, name) select id, 'rooftop', 'On the roof' from building;
insert into roster_hours (person_id, weekday, starts, ends)
  select person_id, weekday, '07:00', '18:00' from membership, generate_series(1, 7) weekday where role = 'technician';
insert into stock_place (kind, name) values ('shelf', 'Back room');
insert into part (code, name_en, name_fr, unit) values ('pad-112', 'Pad', 'Tampon', 'C62');
insert into price (item_kind, item_code, price_minor, currency, valid_from)
  values ('labour', 'hour', 12000, 'CAD', '2026-01-01');
insert into part (code, name_en, name_fr, unit)
  values ('own-' || left(current_tenant()::text, 8) || right(current_tenant()::text, 4), 'Own', 'À nous', 'C62');
