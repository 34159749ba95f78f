select h.key as home, b.name as building, e.name as unit, e.kind, e.make, e.model, e.serial, e.location,
       e.installed_on as installed, e.maker_warranty_until, e.labour_warranty_until, e.registration,
       e.fits::text as fits, e.nameplate::text as nameplate, e.ended_on
  from equipment e left join home h on (h.tenant_id, h.id) = (e.tenant_id, e.home_id)
  left join building b on (b.tenant_id, b.id) = (e.tenant_id, e.building_id)
 order by h.key, b.name, e.position, e.name
