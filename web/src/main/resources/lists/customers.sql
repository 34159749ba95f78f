select key as customer, name, language, phone, email, street, city, region, postal, country, invoices,
       purchase_order, notes
  from customer order by name, key
