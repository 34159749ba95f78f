package changeover.web;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;

/** A lived-in home that lies in Quebec: its taxes, and how a yes may be said there. */
@ApplicationScoped
public class AQuebecHome {

    @Inject
    AShop shops;

    @Inject
    ALivedInHome homes;

    @Inject
    EntityManager rows;

    public ALivedInHome.Lived sold(AShop.Shop shop, String language) {
        ALivedInHome.Lived lived = homes.sold(shop, language);
        shops.in(
                shop,
                () -> rows.createNativeQuery("update home set region = 'QC' where id = :home")
                        .setParameter("home", lived.home())
                        .executeUpdate());
        return lived;
    }
}
