-- What a customer had prepaid when the shop was taken over is a payment that the old books took in.
alter table payment drop constraint payment_way_check;
alter table payment add constraint payment_way_check
  check (way in ('cash', 'card', 'cheque', 'transfer', 'debit', 'other', 'before'));
alter table payment add constraint nothing_goes_back_to_the_old_books check (way <> 'before' or kind = 'payment');
