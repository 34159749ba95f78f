-- An agreement remembers the tasks of its plan as it was sold, so that a machine that comes to be known later is promised
-- what was sold and not what the plan says by then. Empty in agreements made before: there the plan of today speaks.
alter table agreement add column sold_tasks jsonb;
