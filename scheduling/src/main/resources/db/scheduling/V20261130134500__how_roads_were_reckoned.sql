-- How the roads of a planned season were reckoned: as the crow flies, by a table of roads, or as the crow flies since the
-- table did not answer.
alter table season_run_end add column roads text not null default 'crow'
  constraint season_run_roads check (roads in ('crow', 'table', 'crow_for_table'));
