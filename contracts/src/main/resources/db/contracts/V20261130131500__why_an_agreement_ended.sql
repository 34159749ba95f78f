-- The law of some places asks why an agreement ended before it says what goes back; null where nobody chose a reason.
alter table agreement_ending add column cause text
  constraint ending_cause_known check (cause in ('moved', 'commercial-use', 'home-sold', 'unwanted', 'unpaid'));
