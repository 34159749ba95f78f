package changeover.deploy.admin;

import java.util.List;

/**
 * No part is lost or doubled between an order, the shelf, a van and what went back. What was kept before two homes were made one stays
 * at the home where it was kept, so the two count as one.
 */
final class PartInvariants {
    static final List<Invariant> ALL = List.of(
            new Invariant("parts-on-order", "part_order", """
                    select count(*), count(*) filter (where a.quantity > o.quantity
                        or coalesce(r.quantity, 0) > coalesce(a.quantity, 0)
                        or (v.home_id <> o.home_id and not exists (select 1 from home_merge h where h.tenant_id = v.tenant_id
                            and h.home_id in (v.home_id, o.home_id) and h.other_id in (v.home_id, o.home_id))))
                      from part_order o
                      join visit v on v.tenant_id = o.tenant_id and v.id = o.visit_id
                      left join (select tenant_id, order_id, sum(quantity) as quantity from part_arrival group by 1, 2) a
                        on a.tenant_id = o.tenant_id and a.order_id = o.id
                      left join (select tenant_id, order_id, sum(quantity) as quantity from part_return group by 1, 2) r
                        on r.tenant_id = o.tenant_id and r.order_id = o.id"""),
            new Invariant("parts-arrived", "part_arrival", """
                    select count(*), count(*) filter (where m.n is distinct from 1 or m.quantity is distinct from a.quantity)
                      from part_arrival a
                      join part_order o on o.tenant_id = a.tenant_id and o.id = a.order_id
                      left join lateral (select count(*) as n, sum(x.quantity) filter (where x.kind = 'receipt'
                           and x.part_code = o.part_code and x.place_id = a.place_id) as quantity from stock_movement x
                         where x.tenant_id = a.tenant_id and x.operation_id = a.id) m on true"""),
            new Invariant("parts-returned", "part_return", """
                    select count(*), count(*) filter (where coalesce(f.quantity, 0) <>
                          case when r.to_place_id = r.from_place_id then 0 else -r.quantity end
                        or coalesce(t.quantity, 0) <>
                          case when r.to_place_id is null or r.to_place_id = r.from_place_id then 0 else r.quantity end)
                      from part_return r
                      join part_order o on o.tenant_id = r.tenant_id and o.id = r.order_id
                      left join lateral (select sum(x.quantity) as quantity from stock_movement x
                         where x.tenant_id = r.tenant_id and x.operation_id = r.id and x.part_code = o.part_code
                           and x.place_id = r.from_place_id) f on true
                      left join lateral (select sum(x.quantity) as quantity from stock_movement x
                         where x.tenant_id = r.tenant_id and x.operation_id = r.id and x.part_code = o.part_code
                           and x.place_id = r.to_place_id) t on true"""),
            new Invariant("parts-not-doubled", "part_used", """
                    select count(*), count(*) filter (where m.quantity <> 0 and p.quantity is null)
                      from (select tenant_id, visit_id, part_code, sum(quantity) as quantity from stock_movement
                             where visit_id is not null and kind in ('use', 'return') group by 1, 2, 3) m
                      left join (select tenant_id, visit_id, part_code, sum(quantity) as quantity
                                   from part_used group by 1, 2, 3) p
                        on p.tenant_id = m.tenant_id and p.visit_id = m.visit_id and p.part_code = m.part_code"""),
            new Invariant("parts-caused", "stock_movement", """
                    select count(*), count(*) filter (where
                        (m.kind = 'give' and (g.id is null or g.quantity <> -m.quantity or g.part_code <> m.part_code))
                        or (m.kind = 'return' and m.visit_id is null and r.id is null))
                      from stock_movement m
                      left join part_given g on g.tenant_id = m.tenant_id and g.operation_id = m.operation_id
                      left join part_return r on r.tenant_id = m.tenant_id and r.id = m.operation_id"""),
            new Invariant("parts-given", "part_given", """
                    select count(*), count(*) filter (where m.n is distinct from 1)
                      from part_given g
                      left join lateral (select count(*) as n from stock_movement x
                         where x.tenant_id = g.tenant_id and x.operation_id = g.operation_id and x.kind = 'give'
                           and x.part_code = g.part_code and x.place_id = g.place_id) m on true"""),
            new Invariant("parts-below-nought", "stock_movement", """
                    select count(*), count(*) filter (where quantity < 0 and not named)
                      from (select sum(quantity) as quantity, bool_or(kind in ('use', 'move', 'count')
                                 and trim(coalesce(why, '')) <> '') as named
                              from stock_movement group by tenant_id, place_id, part_code) at_hand"""),
            new Invariant("free-returns", "return_visit", """
                    select count(*), count(*) filter (where v.kind <> 'return' or (b.home_id is distinct from v.home_id
                        and not exists (select 1 from home_merge h where h.tenant_id = v.tenant_id
                            and h.home_id in (v.home_id, b.home_id) and h.other_id in (v.home_id, b.home_id))))
                      from return_visit r
                      join visit v on v.tenant_id = r.tenant_id and v.id = r.visit_id
                      left join visit b on b.tenant_id = v.tenant_id and b.id = v.answers_id"""),
            new Invariant("claims", "part_claim", """
                    select count(*), count(*) filter (where v.home_id <> l.home_id or not exists (
                        select 1 from part_used u
                         where u.tenant_id = l.tenant_id and u.visit_id = l.visit_id and u.part_code = l.part_code))
                      from part_claim l
                      join visit v on v.tenant_id = l.tenant_id and v.id = l.visit_id"""),
            new Invariant("second-visits", "part_second_visit", """
                    select count(*), count(*) filter (where v.answers_id is distinct from o.visit_id
                        or (v.home_id <> o.home_id and not exists (select 1 from home_merge h where h.tenant_id = v.tenant_id
                            and h.home_id in (v.home_id, o.home_id) and h.other_id in (v.home_id, o.home_id)))
                        or v.kind not in ('extra', 'return'))
                      from part_second_visit s
                      join part_order o on o.tenant_id = s.tenant_id and o.id = s.order_id
                      join visit v on v.tenant_id = s.tenant_id and v.id = s.visit_id"""));

    private PartInvariants() {}
}
