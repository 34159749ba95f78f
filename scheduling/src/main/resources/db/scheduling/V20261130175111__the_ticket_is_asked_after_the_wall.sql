-- Row security speaks first: whose row it is comes before whether its writer held the ticket.
drop trigger a_stop_ends_with_its_ticket on back_in_service;
create trigger a_stop_ends_with_its_ticket after insert on back_in_service
  for each row execute function a_stop_ends_with_its_ticket();
