-- How the money of a bank's line changed hands, where the bank says so; and the column of a table that says it.
alter table bank_line add column way text check (way in ('cash', 'card', 'cheque', 'transfer', 'debit', 'other'));
alter table bank add column kind_column int check (kind_column between 1 and 50);
