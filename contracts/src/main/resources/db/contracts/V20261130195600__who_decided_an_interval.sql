-- Who decided an interval and on which day are two facts; until now they stood in one text behind each other.
alter table own_interval
  add column decided_by text,
  add column decided_on date,
  add constraint decided_by_somebody_on_a_day check ((decided_by is null) = (decided_on is null));

update own_interval
   set decided_by = regexp_replace(source, ', [0-9]{4}-[0-9]{2}-[0-9]{2}$', ''),
       decided_on = cast(right(source, 10) as date),
       source = null
 where cadence ->> 'how' = 'look-then-change'
   and source ~ '[^ ].*, [0-9]{4}-[0-9]{2}-[0-9]{2}$' and pg_input_is_valid(right(source, 10), 'date');
