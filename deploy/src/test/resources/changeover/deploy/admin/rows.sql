-- One shop as it stands when everything is well; references and triggers are off, so that a row can be spoiled past them.
set session_replication_role = replica;
select set_config('app.tenant', '00000000-0000-7000-8000-000000000001', false);

insert into visit (id, home_id, kind, window_from, window_until, minutes) values
  ('00000000-0000-7000-8000-000000000011', '00000000-0000-7000-8000-000000000010', 'call', '2026-03-02', '2026-03-03', 60);
insert into visit (id, home_id, kind, window_from, window_until, minutes, answers_id) values
  ('00000000-0000-7000-8000-000000000012', '00000000-0000-7000-8000-000000000010', 'extra', '2026-03-05', '2026-03-06', 30,
   '00000000-0000-7000-8000-000000000011');
insert into stock_place (kind, name, person_id) values ('shelf', 'Shelf', null), ('van', 'Van', uuidv7());

-- Two motors come for an order: one goes to the van and into the machine, one goes back.
insert into part_order (visit_id, home_id, part_code, quantity, supplier, ordered_on, expected_on) values
  ('00000000-0000-7000-8000-000000000011', '00000000-0000-7000-8000-000000000010', 'IND-7', 2, 'Tannery Supply', '2026-03-02',
   '2026-03-04');
insert into part_arrival (order_id, place_id, quantity, day)
  select o.id, p.id, 2, '2026-03-04' from part_order o, stock_place p where p.kind = 'shelf';
insert into stock_movement (part_code, place_id, quantity, kind, operation_id, day)
  select 'IND-7', place_id, quantity, 'receipt', id, day from part_arrival;
insert into stock_movement (part_code, place_id, quantity, kind, operation_id, day)
  select 'IND-7', id, case kind when 'van' then 1 else -1 end, 'move', '00000000-0000-7000-8000-000000000020', '2026-03-05'
    from stock_place;
insert into part_used (id, visit_id, part_code, quantity, place_id, why)
  select uuidv7(), '00000000-0000-7000-8000-000000000012', 'IND-7', 1, id, 'warranty' from stock_place where kind = 'van';
insert into stock_movement (part_code, place_id, quantity, kind, operation_id, visit_id, day)
  select part_code, place_id, -quantity, 'use', id, visit_id, '2026-03-05' from part_used;
insert into part_return (order_id, from_place_id, quantity, day, why)
  select o.id, p.id, 1, '2026-03-06', 'unused' from part_order o, stock_place p where p.kind = 'shelf';
insert into stock_movement (part_code, place_id, quantity, kind, operation_id, day)
  select 'IND-7', from_place_id, -quantity, 'return', id, day from part_return;
insert into part_second_visit (order_id, visit_id) select id, '00000000-0000-7000-8000-000000000012' from part_order;

-- A pad is posted.
insert into stock_movement (part_code, place_id, quantity, kind, day)
  select 'PAD-2', id, 2, 'receipt', '2026-03-02' from stock_place where kind = 'shelf';
insert into part_given (home_id, agreement_id, operation_id, part_code, part_kind, quantity, place_id, how, day)
  select '00000000-0000-7000-8000-000000000010', uuidv7(), uuidv7(), 'PAD-2', 'humidifier-pad', 1, id, 'posted', '2026-03-03'
    from stock_place where kind = 'shelf';
insert into stock_movement (part_code, place_id, quantity, kind, operation_id, day, why)
  select part_code, place_id, -quantity, 'give', operation_id, day, how from part_given;

-- A deposit is used up: most of it applied, the rest given back. Another is still kept.
insert into payment (id, kind, customer_id, day, way, amount_minor, currency) values
  ('00000000-0000-7000-8000-000000000031', 'payment', '00000000-0000-7000-8000-000000000030', '2026-03-02', 'card', 10000, 'CAD'),
  ('00000000-0000-7000-8000-000000000032', 'refund', '00000000-0000-7000-8000-000000000030', '2026-03-09', 'card', 4000, 'CAD'),
  ('00000000-0000-7000-8000-000000000033', 'payment', '00000000-0000-7000-8000-000000000030', '2026-03-09', 'card', 5000, 'CAD');
insert into deposit (payment_id, number, home_id, words) values
  ('00000000-0000-7000-8000-000000000031', 1, '00000000-0000-7000-8000-000000000010', 'A new motor'),
  ('00000000-0000-7000-8000-000000000033', 2, '00000000-0000-7000-8000-000000000010', 'A new boiler');
insert into payment_allocation (payment_id, invoice_id, amount_minor, day) values
  ('00000000-0000-7000-8000-000000000031', uuidv7(), 6000, '2026-03-08');
insert into deposit_return (deposit_id, refund_id)
  select id, '00000000-0000-7000-8000-000000000032' from deposit where number = 1;

-- 34.62 is paid in cash with 34.60.
insert into payment (id, kind, customer_id, day, way, amount_minor, rounding_minor, currency) values
  ('00000000-0000-7000-8000-000000000034', 'payment', '00000000-0000-7000-8000-000000000030', '2026-03-10', 'cash', 3462, -2, 'CAD');
insert into payment_allocation (payment_id, invoice_id, amount_minor, day) values
  ('00000000-0000-7000-8000-000000000034', uuidv7(), 3462, '2026-03-10');

-- A machine was stopped for an electrician, then for a gas fitter, who put it back.
insert into finding (id, visit_id, home_id, level, text, language, told_to, answer, day, cleared_on, cleared_by, cleared_why) values
  ('00000000-0000-7000-8000-000000000040', '00000000-0000-7000-8000-000000000011', '00000000-0000-7000-8000-000000000010',
   'do_not_use', 'Soot at the burner', 'en', 'Anselm Birk', 'yes', '2026-03-02', '2026-03-05', uuidv7(), 'A new burner');
insert into machine_stop (home_id, visit_id, finding_id, person_id, at, day, seen, language, ticket, place) values
  ('00000000-0000-7000-8000-000000000010', '00000000-0000-7000-8000-000000000011', '00000000-0000-7000-8000-000000000040', uuidv7(),
   '2026-03-02 12:00Z', '2026-03-02', 'Soot at the burner', 'en', 'electrical', 'CA-ON');
insert into stop_ticket (stop_id, ticket, why, person_id, at)
  select id, 'gas', 'It burns gas', person_id, '2026-03-02 13:00Z' from machine_stop;
insert into back_in_service (stop_id, how, person_id, ticket_kind, day, at, done)
  select id, 'in_service', person_id, 'gas', '2026-03-05', '2026-03-05 12:00Z', 'A new burner' from machine_stop;

-- A corrected visit waits to be looked over once more; its first report has left.
insert into review_rule (kind, level, from_day) values ('severity', 'urgent', '2026-03-01');
insert into review_hold (visit_id, rule_id, day, at, version)
  select '00000000-0000-7000-8000-000000000011', id, '2026-03-04', '2026-03-04 12:00Z', 2 from review_rule;
