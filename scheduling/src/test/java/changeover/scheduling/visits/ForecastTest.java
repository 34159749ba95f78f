package changeover.scheduling.visits;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.agreements.OfferForecast;
import changeover.contracts.calendar.Term;
import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.History;
import changeover.contracts.catalogue.LongestVisit;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.catalogue.SeasonRules;
import changeover.contracts.customers.ShutTimes;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** What a year of an offer uses up. */
class ForecastTest {

    private static final UUID ROOFTOP = new UUID(0, 7);

    @Test
    void filters_are_counted_as_many_as_the_machine_holds() {
        parts(Map.of(), "4");
        parts(Map.of(ROOFTOP, Map.of("filters", "20x20x2", "filter-count", "6")), "24");
    }

    private static void parts(Map<UUID, Map<String, String>> fits, String expected) {
        Catalogue catalogue = Catalogue.shipped();
        OfferForecast forecast = Forecast.of(
                Term.ofYear(LocalDate.of(2026, 12, 1)),
                4,
                List.of(PromisedTask.of(ROOFTOP, catalogue.task("rooftop-filters"), History.NONE)),
                ShutTimes.NEVER,
                fits,
                new OwnCatalogue.Own(catalogue, List.of(), SeasonRules.USUAL, LongestVisit.ANY));
        assertEquals(List.of(new OfferForecast.Part("filter", new BigDecimal(expected))), forecast.parts());
    }
}
