-- Who pays may ask for words of their own on every invoice, and may have a number for a tax that they account for themselves.
alter table customer add column buyer_reference text, add column tax_number text;
