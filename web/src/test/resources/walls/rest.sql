-- The tables that nothing above writes into: one row each, so that every lock is tried on something.
insert into access_reading (home_id, reason, codes) select id, 'A key for the painter', 1 from home limit 1;
insert into agreement_ending (agreement_id, day, why) select id, '2099-01-01', 'Moves away' from agreement limit 1;
insert into agreement_part (agreement_id, part_kind, quantity) select id, 'filter', 2 from agreement limit 1;
insert into amendment (id, visit_id, version, why, person_id, at, changes)
  select uuidv7(), visit_id, 2, 'One minute more', technician_id, now(), '{}' from closure limit 1;
insert into holiday_choice (holiday, kept) values ('columbus-day', false);
insert into day_off (person_id, day, why) select person_id, '2099-07-01', 'Away' from membership limit 1;
insert into day_passed (day) values ('2026-01-06');
insert into document_order (of_kind, of_id) select 'invoice', id from invoice limit 1;
insert into finding (id, visit_id, home_id, level, text, language, day)
  select uuidv7(), visit_id, home_id, 'recommended', 'Light rust on the pan', 'en', day from closure limit 1;
insert into follow_up (id, visit_id, home_id, kind, opened_on) select uuidv7(), visit_id, home_id, 'visit', day from closure limit 1;
insert into numbering (kind, pattern) values ('credit', 'C-{number}');
insert into own_interval (task_code, equipment_id, cadence, basis)
  select 'filter-thin', id, '{"how": "every-months", "months": 4, "min": 4, "max": 4}', 'The label of the unit' from equipment
   where kind = 'filter-slot' limit 1;
insert into own_tax (region, property_use, work, contract_form, code, label_en, label_fr, category, percent, valid_from,
    source)
  values ('CA-YT', 'any', 'any', 'any', 'gst', 'GST', 'TPS', 'S', 5, '2026-01-01', 'The territory''s own page');
insert into tax_confirmation (region, property_use, work, contract_form, code, percent, valid_from, source, read_on)
  values ('CA-PE', 'any', 'any', 'any', 'hst', 15, '2016-10-01', 'The agency''s own page', '2026-01-05');
insert into write_off (invoice_id, day, amount_minor, why) select invoice_id, day, 1, 'Moved away' from invoice_issue
  where kind <> 'credit' limit 1;
insert into write_off_tax (write_off_id, invoice_tax_id, base_minor, amount_minor)
  select w.id, t.id, 0, 0 from write_off w join invoice_tax t on t.invoice_id = w.invoice_id limit 1;
insert into deposit (payment_id, number, home_id, words) select p.id, 1, h.id, 'A new boiler' from payment p, home h
  where p.kind = 'payment' and not exists (select 1 from payment_allocation a where a.payment_id = p.id) limit 1;
insert into deposit (payment_id, number, home_id, words) select p.id, 1, h.id, 'A new boiler' from payment p, home h
  where p.kind = 'payment' and not exists (select 1 from deposit) limit 1;
insert into payment (kind, customer_id, day, way, amount_minor, currency) select 'refund', customer_id, day, 'card', 1, currency
  from payment where kind = 'payment' limit 1;
insert into deposit_return (deposit_id, refund_id) select d.id, p.id from deposit d, payment p where p.kind = 'refund' limit 1;
insert into part_used (id, visit_id, part_code, quantity, place_id)
  select uuidv7(), visit_id, 'pad-112', 1, place.id from closure, stock_place place limit 1;
insert into running_cost (valid_from, set_up_minutes, overhead, overhead_percent, currency)
  values ('2026-01-01', 15, 'percent', 20, 'CAD');
insert into plan_extra (plan_id, kind, included, price_minor) select id, 'ductless-head', 1, 4900 from plan limit 1;
insert into plan_part (plan_id, part_kind, quantity_a_year) select id, 'filter', 2 from plan limit 1;
insert into reading (id, visit_id, visit_task_id, home_id, code, value, unit, entered_value, standing, day)
  select uuidv7(), c.visit_id, t.id, c.home_id, 'amps', 12.5, 'A', '12.5', 'within', c.day
    from closure c join visit_task t on t.visit_id = c.visit_id limit 1;
insert into stock_movement (id, part_code, place_id, quantity, kind, day) select uuidv7(), 'pad-112', id, 4, 'receipt', '2026-03-02'
  from stock_place limit 1;
insert into unkept_promise (home_id, agreement_id, task_code, wording_en, wording_fr, due_from, due_until, why_en, why_fr)
  select home_id, id, 'filter-thin', 'Filter', 'Filtre', term_from, term_until, 'Too late', 'Trop tard' from agreement
   limit 1;
insert into billing_run_draft (run_id, number, position, invoice_id)
  select r.id, 1, 1, i.id from billing_run r, invoice i limit 1;
insert into billing_run_refusal (run_id, invoice_id, code, why_en, why_fr)
  select r.id, i.id, 'invoice.no-tax', 'No tax is known.', 'Aucune taxe connue.' from billing_run r, invoice i limit 1;
insert into billing_run_batch (run_id, number, issued, joined, refused) select id, 1, 1, 0, 0 from billing_run limit 1;
insert into line_taken_off (invoice_id, kind, item_code, coverage, words_en, words_fr, reckoned_quantity, reckoned_minor)
  select id, 'part', 'pad-112', 'included', 'Pad', 'Tampon', 1, 0 from invoice i
   where not exists (select 1 from invoice_issue s where s.invoice_id = i.id) limit 1;
insert into call (home_id, caller, rang_at, trouble, words, heat, risks, told_to_leave, promised_by)
  select id, 'Mara Quill', now() - interval '1 hour', 'no_heat', 'The furnace clicks', 'no', '{infant}', false, now()
    from home limit 1;
insert into call (home_id, caller, rang_at, trouble, words, heat, risks, told_to_leave, promised_by)
  select id, 'Anselm Birk', now() - interval '2 hours', 'noise', 'It hums', 'yes', '{}', false, now() from home limit 1;
insert into call_outcome (call_id, how, why, at) select id, 'advice', 'The filter', now() from call where trouble = 'noise' limit 1;
insert into answer_time (urgency, with_plan, hours) values ('soon', true, 6);
insert into on_call (person_id, from_day, until_day) select person_id, '2099-07-01', '2099-07-08' from membership limit 1;
insert into account_code (role, code) values ('receivable', '1100');
insert into period_close (until_day) values ('1999-12-31');
insert into period_reopening (close_id, why) select id, 'A late letter of the bank' from period_close limit 1;
insert into earned_at_close (close_id, agreement_id, invoiced_minor, earned_minor)
  select c.id, a.id, 0, 0 from period_close c, agreement a limit 1;
insert into fee (kind, region, from_day, amount_minor, currency, source)
  values ('returned', 'CA-QC', '2099-01-01', 2000, 'CAD', 'Agreement, clause 9');
insert into fee_charged (fee_id, invoice_id, payment_id) select f.id, i.id, p.id from fee f, invoice i, payment p limit 1;
insert into mark_up (scope, item, valid_from, percent, step_minor, currency) values ('kind', 'filter', '2026-01-01', 90, 5, 'CAD');
insert into labour_terms (valid_from, step_minutes, minimum_minutes) values ('2026-01-01', 15, 0);
insert into travel_zone (code, valid_from, name_en, name_fr, postals) values ('river', '2026-01-01', 'River', 'Rivière', '{Z9Z}');
insert into reminder_way (how) values ('list');
insert into reminder_step (days_late, tone, subject_en, subject_fr, body_en, body_fr)
  values (300, 'firm', 'Late', 'En retard', '{documents}', '{documents}');
insert into reminder (customer_id, day, days_late, tone) select customer_id, day, 300, 'firm' from invoice_issue limit 1;
insert into reminder_item (reminder_id, invoice_id, days_late, open_minor)
  select r.id, s.invoice_id, 300, 100 from reminder r, invoice_issue s limit 1;
insert into reminder_hold (customer_id, day, kind, why) select customer_id, day, 'dispute', 'The pad was wet' from invoice_issue limit 1;
insert into reminder_hold_end (hold_id, day) select id, day from reminder_hold limit 1;
insert into bank (name) values ('Harbour Bank');
insert into bank_file (bank_id, name) select id, 'april.csv' from bank;
insert into bank_line (bank_id, key, day, amount_minor, words)
  select id, 'csv:' || number, '2026-02-03', 4200 + number, 'Deposit' from bank, generate_series(1, 3) number;
insert into bank_line_use (line_id, payment_id, how, why)
  select l.id, p.id, 'returned', 'AMOUNT' from bank_line l, payment p where l.key = 'csv:1' limit 1;
insert into bank_line_dismissal (line_id, why) select id, 'The bank''s own' from bank_line where key = 'csv:2';
insert into serving_rule (what, days_late, least_minor) values ('ask', 30, 0);
insert into serving_word (customer_id, day, what, why) select customer_id, day, 'ask', 'Twice late' from invoice_issue limit 1;
insert into debit_mandate (customer_id, signed_on, reference) select customer_id, day, 'P-1' from invoice_issue limit 1;
insert into debit_mandate_end (mandate_id, day) select id, signed_on from debit_mandate limit 1;
insert into account_statement (customer_id, from_day, until_day, day, language, currency, opening_minor, closing_minor, lines, buyer)
  select customer_id, day, day, day, 'en', 'CAD', 0, 0, '[]', '["Anselm Birk"]' from invoice_issue limit 1;
insert into paid_before (invoice_id, amount_minor) select invoice_id, 1 from invoice_issue where kind <> 'credit' limit 1;
insert into settlement (agreement_id, day, way, kept_minor, why) select id, term_from, 'pro-rata', 1, 'Moved away' from agreement limit 1;
insert into instalment_lessening (invoice_id, day, amount_minor, why) select id, may_issue_from, 1, 'Moved away' from invoice limit 1;
insert into document_order (of_kind, of_id) select 'statement', id from account_statement limit 1;
insert into technician_base (person_id, address, latitude, longitude)
  select person_id, '3 Tannery Row', 45.4, -75.7 from membership where role = 'technician' limit 1;
insert into task_need (task_code, people, why) values ('filter-at-visit', 2, 'A long ladder');
insert into visit_need (visit_id, people, earliest, why) select id, 2, '09:00', 'The school bus' from visit limit 1;
insert into appointment_second (visit_id, technician_id, day, starts, ends)
  select a.visit_id, m.person_id, a.day, a.starts, a.ends from appointment a, membership m where m.role = 'office' limit 1;
insert into season_run (season_id, from_day, until_day, first_day, visits)
  select id, '2027-04-01', '2027-06-16', '2027-04-01', 2 from season;
insert into season_run_step (run_id, rounds, all_rounds, without_day, plan) select id, 100, 200, 1, '' from season_run;
insert into season_run_halt (run_id) select id from season_run;
insert into season_run_end (run_id, how, driving) select id, 'done', 40 from season_run;
insert into season_run_visit (run_id, visit_id, technician_id, day, starts, ends, road)
  select r.id, v.id, m.person_id, '2027-04-05', '08:00', '09:00', 12 from season_run r, visit v, membership m
   where m.role = 'technician' limit 1;
insert into season_run_visit (run_id, visit_id, why) select r.id, v.id, 'no_hours' from season_run r, visit v
   where not exists (select 1 from season_run_visit x where x.visit_id = v.id) limit 1;
insert into season_run_more (run_id, day, technicians, tickets, visits)
  select r.id, '2027-04-06', 1, '{gas}', array[v.visit_id] from season_run r, season_run_visit v where v.why is not null;
insert into season_run_week (run_id, monday, minutes, booked) select id, '2027-04-05', 2400, 60 from season_run;
insert into season_run_acceptance (run_id, visits) select id, 1 from season_run;
insert into hour_told (visit_id, day, starts) select visit_id, day, starts from appointment limit 1;
insert into appointment_move (visit_id, was_technician_id, was_day, was_starts, told, asked_by, why)
  select visit_id, technician_id, day, starts, true, 'us', 'The van broke down' from appointment limit 1;
insert into to_ring (visit_id, was_day, was_starts, was_technician_id, was_told, why)
  select visit_id, day, starts, technician_id, true, 'Ill' from appointment limit 1;
insert into to_ring (visit_id, was_day, was_starts, was_technician_id, was_told, why)
  select visit_id, day, starts, technician_id, false, 'Ill' from appointment limit 1;
insert into rung (ring_id) select id from to_ring where not was_told;
insert into part_supplier (id, part_code, supplier) values (uuidv7(), 'pad-112', 'Tannery Supply');
insert into part_minimum (id, part_code, place_id, quantity) select uuidv7(), 'pad-112', id, 2 from stock_place limit 1;
insert into estimate (home_id, customer_id, language, words, minutes, trip, valid_until, currency, written_on)
  select distinct on (customer_id) home_id, customer_id, 'en', 'Two new sensors', 60, true, '2099-01-01', 'CAD', '2026-01-05'
    from home_part where part = 'pays';
insert into estimate_item (estimate_id, position, kind, item_code, quantity) select id, 1, 'part', 'pad-112', 1 from estimate;
insert into estimate_line (estimate_id, position, kind, item_code, coverage, words_en, words_fr, why_en, why_fr, quantity, unit,
    unit_price_minor, discount_minor, net_minor, work)
  select id, 1, 'part', 'pad-112', 'billable', 'Pad', 'Tampon', '', '', 1, 'C62', 2000, 0, 2000, 'repair' from estimate;
insert into estimate_tax (estimate_id, position, code, label_en, label_fr, percent, registration, base_minor, amount_minor, lines,
    source)
  select id, 1, 'gst', 'GST 5%', 'TPS 5 %', 5, '123456789 RT0001', 2000, 100, '{1}', 'The agency''s own page' from estimate;
insert into estimate_offer (estimate_id, series, number, label, day, subtotal_minor, tax_minor, total_minor)
  select id, 'E-2026-', row_number() over (order by id), 'E-2026-000' || row_number() over (order by id), '2026-01-06', 2000, 100,
         2100 from estimate;
insert into estimate_answer (estimate_id, how, by_name, at, channel)
  select id, 'accepted', 'Anselm Birk', '2026-01-07 15:00Z', 'call' from estimate order by id limit 1;
insert into estimate_work (estimate_id, visit_id) select a.estimate_id, v.id from estimate_answer a
  join estimate e on e.id = a.estimate_id join visit v on v.home_id = e.home_id limit 1;
insert into estimate_more (estimate_id, accepted_minor, currency, by_name, at, channel, words)
  select estimate_id, 9000000, 'CAD', 'Anselm Birk', '2026-01-08 15:00Z', 'call', 'A third sensor' from estimate_answer;
insert into estimate_asked_more (estimate_id, asked_minor, currency, words, day)
  select estimate_id, 9500000 + n, 'CAD', 'A fourth sensor', '2026-01-09' from estimate_answer, generate_series(1, 2) n;
insert into estimate_more_refused (asked_id, by_name, at)
  select id, 'Anselm Birk', '2026-01-10 15:00Z' from estimate_asked_more order by id limit 1;
insert into estimate_deposit (estimate_id, deposit_id) select a.estimate_id, d.id from estimate_answer a, deposit d limit 1;
insert into site_consent (region, from_day, allowed, source) values ('CA-QC', '2099-01-01', true, 'A letter of our lawyer');
insert into sent_form (person_id, id, request_digest, location)
  select person_id, uuidv7(), 'x', '/shop' from membership limit 1;
insert into plan_change (agreement_id, instead_of_id)
  select a.id, b.id from agreement a join agreement b on b.id <> a.id order by a.number desc, b.number limit 1;
insert into filter_look (home_id, equipment_id, day, found, changed, told_by)
  select home_id, id, '2026-03-02', 'grey', true, 'Mara Quill' from equipment where kind = 'filter-slot' and home_id is not null
   limit 1;
insert into accepted_chance (percent) values (12);
insert into part_given (home_id, agreement_id, operation_id, part_code, part_kind, quantity, place_id, how, day)
  select a.home_id, a.id, uuidv7(), 'pad-112', 'humidifier-pad', 1, p.id, 'posted', '2026-03-02' from agreement a, stock_place p limit 1;
insert into part_order (visit_id, home_id, part_code, quantity, supplier, ordered_on, expected_on)
  select id, home_id, 'pad-112', 2, 'Tannery Supply', '2026-03-02', '2026-03-05' from visit limit 1;
insert into part_arrival (order_id, place_id, quantity, day) select o.id, p.id, 1, '2026-03-04' from part_order o, stock_place p limit 1;
insert into part_told (order_id, at, how, who, here) select id, now(), 'call', 'Anselm Birk', false from part_order limit 1;
insert into part_second_visit (order_id, visit_id) select o.id, v.id from part_order o, visit v where v.id <> o.visit_id limit 1;
insert into part_order_ending (order_id, day, why) select id, '2026-03-09', 'No longer made' from part_order limit 1;
insert into part_return (order_id, from_place_id, quantity, day, why, credit_minor, currency)
  select o.id, p.id, 1, '2026-03-09', 'wrong', 2500, 'CAD' from part_order o, stock_place p limit 1;
insert into part_credit (return_id, day, amount_minor, currency) select id, '2026-03-10', 2500, 'CAD' from part_return limit 1;
insert into return_visit (visit_id, cause, words) select id, 'setting', 'Again no heat' from visit limit 1;
insert into labour_guarantee (work, from_day, months) values ('repair', '2026-01-05', 12);
insert into part_warranty (part_code, from_day, months, basis) values ('pad-112', '2026-01-05', 12, 'The box');
insert into legal_warranty (region, from_day, months, source) values ('CA-YT', '2026-01-05', 12, 'The territory''s own page');
insert into part_claim (visit_id, home_id, part_code, maker, claimed_on) select id, home_id, 'pad-112', 'Norrland', '2026-03-09'
  from visit limit 1;
insert into claim_answer (claim_id, day, amount_minor, currency) select id, '2026-03-20', 6450, 'CAD' from part_claim limit 1;
insert into whole_day (day, cause, why) values ('2099-02-02', 'storm', 'Ice');
insert into whole_day_visit (whole_day_id, visit_id, was_technician_id, was_starts, told, standing)
  select w.id, v.id, m.person_id, '08:00', true, 'open' from whole_day w, visit v, membership m limit 1;
insert into whole_day_letter (whole_day_id, customer_id) select w.id, c.id from whole_day w, customer c limit 1;
insert into home_shut (home_id, from_day, heat_off, water_drained) select id, '2099-11-15', true, true from home limit 1;
insert into home_opening (shut_id, day) select id, '2099-12-15' from home_shut limit 1;
insert into home_handover (home_id, kind, customer_id, day) select h.id, 'let', c.id, '2026-07-01' from home h, customer c limit 1;
insert into agreement_takeover (agreement_id, day, was_signer_id, was_payer_id, customer_id)
  select id, '2099-07-01', signer_id, payer_id, payer_id from agreement limit 1;
insert into key_return (home_id, kind, label, given_to, day) select id, 'key', 'cellar', 'Anselm Birk', '2026-07-01' from home limit 1;
insert into business_paper (kind, name, expires_on, remind_days)
  select 'licence', 'Licence ' || n, '2099-01-01', 60 from generate_series(1, 3) n;
insert into business_paper_end (paper_id, day) select id, '2026-03-01' from business_paper order by id limit 1;
insert into business_paper_sent (paper_id, customer_id, day) select p.id, c.id, '2026-03-01' from business_paper p, customer c limit 1;
insert into paper_start (sha256, bytes) select sha256(n::text::bytea), n::text::bytea from generate_series(1, 3) n;
insert into document (of_kind, of_id, version, media_type, file_name, language, sha256, own_bytes)
  select 'paper', id, 1, 'application/pdf', 'licence.pdf', 'en', sha256('x'), 'x' from business_paper;
insert into instrument (name, serial) select 'Manometer', 'M-' || n from generate_series(1, 3) n;
insert into instrument_calibration (instrument_id, day, until_day) select id, '2026-01-05', '2027-01-05' from instrument;
insert into instrument_holder (instrument_id, person_id, day) select i.id, m.person_id, '2026-01-05' from instrument i, membership m limit 1;
insert into instrument_end (instrument_id, day) select id, '2026-03-01' from instrument order by id limit 1;
insert into hours_correction (person_id, day, minutes, why)
  select person_id, '2026-03-02', 480, 'Drove to the far lake' from membership where role = 'technician' limit 1;
insert into hours_signature (person_id, monday, minutes, at)
  select person_id, '2026-03-02', 480, now() from membership where role = 'technician' limit 1;
insert into ticket (person_id, kind, number) select person_id, 'gas', 'G-1' from membership order by id limit 1 on conflict do nothing;
insert into machine_stop (home_id, person_id, at, day, seen, language, shut_off, ticket, place)
  select h.id, t.person_id, '2026-03-02 15:00Z', '2026-03-02', 'Soot over the door', 'en', 'Its own switch', 'gas', 'CA-ON'
    from home h cross join (select person_id from ticket where kind = 'gas' limit 1) t;
insert into machine_stop (home_id, person_id, at, day, seen, language, ticket, place)
  select s.home_id, s.person_id, '2026-03-01 15:00Z', '2026-03-01', 'A smell', 'en', 'gas', 'CA-ON' from machine_stop s limit 1;
insert into back_in_service (stop_id, how, person_id, ticket_kind, ticket_number, day, at, done)
  select id, 'in_service', person_id, 'gas', 'G-1', '2026-03-05', '2026-03-05 15:00Z', 'A new valve' from machine_stop
   where seen = 'A smell';
insert into stop_heat (stop_id, person_id, at, only_heat, freezing)
  select id, person_id, at, false, true from machine_stop limit 1;
insert into stop_duty_done (stop_id, code, who, day, at) select id, 'tag', 'Rufus Ashe', day, at from machine_stop limit 1;
insert into stop_duty (stop_id, person_id, at, words, office, due, source)
  select id, person_id, at, 'Ring the landlord', true, day, 'The lease, section 4' from machine_stop limit 1;
insert into stop_ticket (stop_id, ticket, why, person_id, at) select id, 'gas', 'It burns gas', person_id, at from machine_stop limit 1;
insert into review_rule (kind, from_day) values ('beside', '2099-01-01'), ('beside', '2099-02-01');
insert into review_rule_end (rule_id, day) select id, '2026-03-05' from review_rule where from_day = '2099-01-01';
insert into review_hold (visit_id, rule_id, day, at) select c.visit_id, r.id, c.day, c.closed_at from closure c, review_rule r limit 1;
insert into review_answer (hold_id, person_id, day, at) select h.id, m.person_id, h.day, h.at from review_hold h, membership m limit 1;
insert into take_over (day) values ('2026-01-05');
insert into old_sheet (name, file, reading, read_at) select 'old.csv', convert_to(E'Nom;Adresse;Ville\nMara Quill;9 Tannery Row;Port Ambrose\n', 'UTF8'), null, null;
insert into agreement_taken_over (agreement_id, day, asked_minor) select id, '2026-01-05', 0 from agreement order by number limit 1;
insert into home_merge (home_id, other_id) select a.id, b.id from home a join home b on b.id > a.id order by a.id, b.id limit 1;
insert into home_merge_move (merge_id, table_name, row_id) select id, 'hazard', uuidv7() from home_merge;
insert into homes_apart (home_id, other_id) select other_id, home_id from home_merge;
insert into home_merge_undoing (merge_id) select id from home_merge;
insert into opening_balance (customer_id, since, amount_minor, currency, words) select id, '2026-01-02', 4500, 'CAD', 'Old invoice 88'
  from customer order by id limit 1;
insert into last_time_unread (home_id, equipment_id, task_code) select home_id, id, 'coil-wash' from equipment
  where home_id is not null order by id limit 1;
insert into agreement_numbers (first_number) values (9001);
insert into partner (name, trade) select 'Lindqvist Electric ' || n, 'electrical' from generate_series(1, 3) n;
insert into partner_paper (partner_id, kind, expires_on, remind_days) select id, 'licence', '2099-01-01', 60 from partner;
insert into partner_paper (partner_id, kind, expires_on, remind_days) select id, 'other', '2098-01-01', 60 from partner;
insert into partner_paper_end (paper_id, day) select id, '2026-03-01' from partner_paper where kind = 'other' order by id limit 1;
insert into partner_end (partner_id, day) select id, '2026-03-01' from partner order by id limit 1;
insert into visit (id, home_id, kind, window_from, window_until, minutes)
  select cast('00000000' || substr(cast(uuidv7() as text), 9) as uuid), id, 'extra', '2099-03-01', '2099-03-31', 60 from home limit 1;
insert into partner_visit (visit_id, partner_id, day, price_minor, currency)
  select v.id, p.id, '2099-03-02', 18000, 'CAD' from visit v, partner p
   where not exists (select 1 from appointment a where a.visit_id = v.id) order by v.id, p.id desc limit 1;
insert into partner_visit_end (given_id, day, why) select id, '2026-03-01', 'They are ill' from partner_visit;
insert into partner_visit_done (visit_id, partner_id, given_id, day, price_minor, currency)
  select visit_id, partner_id, id, day, price_minor, currency from partner_visit;
insert into partner_report (visit_id, partner_id, media_type, bytes)
  select visit_id, partner_id, 'application/pdf', convert_to('%PDF-1.7 x', 'UTF8') from partner_visit;
insert into call_correction (call_id, caller, trouble, words, heat, risks, told_to_leave, promised_by, why, person_id, at)
  select c.id, 'Mara Quill', c.trouble, 'The pump hums', c.heat, c.risks, c.told_to_leave, c.promised_by, 'Misheard', m.person_id, now()
    from call c, membership m limit 1;
insert into plan_answer (plan_id, day, hours, nights) select id, '2026-03-01', 24, false from plan limit 1;
insert into road_pace (detour_percent, km_an_hour) values (140, 50);
