-- An agreement that was settled may be settled once more, with less kept: each time says what fell.
alter table instalment_lessening drop constraint an_instalment_is_lessened_once;
create index instalment_lessening_of on instalment_lessening (tenant_id, invoice_id);
