package changeover.contracts.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class RegionNamesTest {

    private static void check(String code, String english, String french) {
        assertEquals(new Wording(english, french), RegionNames.of(code));
    }

    @Test
    void a_place_is_called_by_its_name() {
        check("CA-QC", "Quebec", "Québec");
        check("CA-NL", "Newfoundland and Labrador", "Terre-Neuve-et-Labrador");
        check("US-CA", "California", "Californie");
        check("NS", "Nova Scotia", "Nouvelle-Écosse");
        check("TX", "Texas", "Texas");
    }

    @Test
    void a_place_without_a_name_here_stands_as_it_was_given() {
        check("FR-IDF", "FR-IDF", "FR-IDF");
        check("AU-NT", "AU-NT", "AU-NT");
    }
}
