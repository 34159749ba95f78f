package changeover.deploy.demo;

import changeover.contracts.Examples;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Ids;
import changeover.scheduling.claims.NewClaim;
import changeover.scheduling.claims.PartClaims;
import changeover.scheduling.partners.Partners;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

/** What a shop has to do with others: a partner whose licence runs out soon, and a claim that waits for its maker's answer. */
@ApplicationScoped
class DemoOutside {

    private static final int LICENCE_DAYS = 40;

    @Inject
    EntityManager rows;

    @Inject
    Partners partners;

    @Inject
    PartClaims claims;

    void meet(Examples.Shop shop, LocalDate today) {
        boolean french = shop.language().equals("fr");
        UUID partner = partners.add(new Partners.Facts(
                french ? "Électricité Lindqvist" : "Lindqvist Electric", "electrical", "555-0177", null));
        partners.addPaper(partner, new Partners.Paper("licence", "5501-7701", today.plusDays(LICENCE_DAYS), 60));
        partners.addPaper(partner, new Partners.Paper("insurance", "P-7701", today.plusYears(1), 60));
        claim(french);
    }

    /** For the newest part of a repair; none where no visit used one. */
    @SuppressWarnings("unchecked")
    private void claim(boolean french) {
        List<Tuple> fitted =
                rows.createNativeQuery("""
                        select u.visit_id, u.equipment_id, u.part_code from part_used u
                          join visit v on v.tenant_id = u.tenant_id and v.id = u.visit_id
                         order by v.kind = 'call' desc, u.id desc""", Tuple.class).setMaxResults(1).getResultList();
        fitted.forEach(part -> claims.claim(
                Ids.next(),
                new NewClaim(
                        part.get("visit_id", UUID.class),
                        part.get("equipment_id", UUID.class),
                        part.get("part_code", String.class),
                        "K-40412",
                        "K-58816",
                        french ? "Norrvent, le fabricant" : "Norrvent, the maker",
                        "R-2207",
                        Money.of("64.50", "CAD"))));
    }
}
