-- Lists by day, newest first or of a period, that would otherwise read every row of the business.
create index payment_by_day on payment (tenant_id, day);
create index reminder_by_time on reminder (tenant_id, made_at desc);
create index account_statement_of_period on account_statement (tenant_id, from_day, until_day, day);
create index bank_line_use_by_time on bank_line_use (tenant_id, made_at desc);

-- A fee is found by the draft that asks for it.
create index fee_charged_of_invoice on fee_charged (tenant_id, invoice_id);
