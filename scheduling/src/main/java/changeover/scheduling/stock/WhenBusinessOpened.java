package changeover.scheduling.stock;

import changeover.contracts.tenants.BusinessOpened;
import changeover.contracts.tenants.Locales;
import changeover.contracts.words.Wording;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;

/** A new business has a shelf. */
@ApplicationScoped
class WhenBusinessOpened {

    private static final Wording SHELF = new Wording("Shelf", "Tablette");

    @Inject
    StockPlaces places;

    void open(@Observes BusinessOpened opened) {
        places.add(StockPlace.shelf(SHELF.in(Locales.of(opened.language()))));
    }
}
