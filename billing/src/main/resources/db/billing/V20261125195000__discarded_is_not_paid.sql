-- A payment that was typed while somebody discarded its draft pays nothing there: the money stays the customer's.
create trigger discarded_gets_nothing_more after insert on payment_allocation referencing new table as added
  for each statement execute function add_nothing_to_discarded();
