-- Where the shop stands: distances are reckoned from here.
alter table business_profile
  add column latitude numeric(9, 6) constraint shop_latitude check (latitude between -90 and 90),
  add column longitude numeric(9, 6) constraint shop_longitude check (longitude between -180 and 180),
  add constraint shop_stands_at_both check ((latitude is null) = (longitude is null));
