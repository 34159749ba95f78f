-- What EN 16931 asks of an invoice and stood on no frozen row yet. Documents issued before keep the text that their hash
-- covers (form 1); from now on the hash covers these columns too (form 2).
alter table invoice_issue
  add column form int not null default 1 constraint form_of_hash_known check (form in (1, 2)),
  add column type_code text,
  add column buyer_reference text,
  add column terms_en text,
  add column terms_fr text,
  add column untaxed_category text,
  add column untaxed_en text,
  add column untaxed_fr text,
  add constraint new_documents_have_their_elements check (form = 1 or (type_code is not null
    and (type_code = '381' or (terms_en is not null and terms_fr is not null))
    and (untaxed_category is null) = (untaxed_en is null))),
  add constraint said_in_both_languages check ((reason_en is null) = (reason_fr is null)
    and (terms_en is null) = (terms_fr is null) and (untaxed_en is null) = (untaxed_fr is null));
alter table invoice_tax
  add column exemption_en text,
  add column exemption_fr text,
  add constraint exempted_in_both_languages check ((exemption_en is null) = (exemption_fr is null));
