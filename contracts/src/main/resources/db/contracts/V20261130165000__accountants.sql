-- Somebody who keeps the books of a business from outside: reads its money, writes nothing.
alter table membership drop constraint membership_role_check,
  add constraint membership_role_check check (role in ('owner', 'office', 'technician', 'accountant'));
