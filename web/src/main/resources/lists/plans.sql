select code, name_en, name_fr, visits, price_minor, currency, discount_percent,
       instalments, included_minutes, on_sale_from, withdrawn_on from plan order by code
