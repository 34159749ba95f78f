-- Rows that people of the business itself may take back, as the trials of its own pages do.
insert into bank_line_dismissal (line_id, why)
  select id, 'The bank''s own' from bank_line where key = 'csv:2' on conflict do nothing;
insert into part_supplier (id, part_code, supplier) values (uuidv7(), 'pad-112', 'Tannery Supply') on conflict do nothing;
insert into part_minimum (id, part_code, place_id, quantity) select uuidv7(), 'pad-112', id, 2 from stock_place order by id limit 1
  on conflict do nothing;
