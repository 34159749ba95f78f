-- What was taken away still belongs to the record that it hung on: its history is found there.
alter table audit add column of_id uuid generated always as (
  cast(case when act = 'delete' then
    case table_name
      when 'home_part' then before ->> 'home_id'
      when 'hazard' then before ->> 'home_id'
      when 'access_code' then before ->> 'home_id'
      when 'household_task' then before ->> 'home_id'
      when 'own_interval' then before ->> 'equipment_id'
      when 'plan_task' then before ->> 'plan_id'
      when 'plan_part' then before ->> 'plan_id'
      when 'plan_extra' then before ->> 'plan_id'
      when 'agreement_promise' then before ->> 'agreement_id'
      when 'agreement_part' then before ->> 'agreement_id'
      when 'appointment' then before ->> 'visit_id'
      when 'finding' then before ->> 'visit_id'
      when 'follow_up' then before ->> 'visit_id'
      when 'visit_task' then before ->> 'visit_id'
      when 'task_outcome' then before ->> 'visit_id'
      when 'part_used' then before ->> 'visit_id'
      when 'photo' then before ->> 'visit_id'
      when 'invoice_line' then before ->> 'invoice_id'
      when 'payment_allocation' then before ->> 'payment_id'
      when 'ticket' then before ->> 'person_id'
      when 'roster_hours' then before ->> 'person_id'
      when 'day_off' then before ->> 'person_id'
    end
  end as uuid)) stored;
create index audit_of_what_hung on audit (tenant_id, of_id) where of_id is not null;
create index audit_of_a_list on audit (tenant_id, table_name, at);
create index equipment_of_a_building on equipment (tenant_id, building_id) where building_id is not null;
