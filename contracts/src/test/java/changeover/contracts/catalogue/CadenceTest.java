package changeover.contracts.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import changeover.contracts.calendar.Climate;
import changeover.contracts.catalogue.Cadence.BeforeSeason;
import changeover.contracts.catalogue.Cadence.CheckThenReplace;
import changeover.contracts.catalogue.Cadence.EachSeason;
import changeover.contracts.catalogue.Cadence.EveryMonths;
import changeover.contracts.catalogue.Cadence.OnRequest;
import changeover.contracts.catalogue.Cadence.TimesAYear;
import java.time.Period;
import java.util.List;
import org.junit.jupiter.api.Test;

class CadenceTest {

    /** Cooling 1 April to 15 June, heating 1 September to 15 November. */
    private static final Cadence TWO_VISITS = EachSeason.of("cooling", "heating");

    @Test
    void itReadsAsASentence() {
        says(
                new BeforeSeason("winter", Period.ofWeeks(6)),
                "before each heating season",
                "avant chaque saison de chauffage");
        says(
                TWO_VISITS,
                "at each cooling changeover and each heating changeover",
                "à chaque passage à la climatisation et à chaque passage au chauffage");
        says(new EveryMonths(12, 9, 15), "every 12 months, at most 15 months", "tous les 12 mois, au plus 15 mois");
        says(EveryMonths.exactly(1), "every month", "tous les mois");
        says(new TimesAYear(2), "twice a year", "2 fois par an");
        says(
                new CheckThenReplace(1, 3),
                "look every month, replace after 3 months at the latest",
                "vérifier tous les mois, remplacer après 3 mois au plus tard");
        says(
                new Cadence.LookThenChange(49, 56),
                "look after 7\u00a0weeks, change after 8\u00a0weeks at the latest",
                "vérifier après 7\u00a0semaines, remplacer après 8\u00a0semaines au plus tard");
        says(
                new Cadence.LookThenChange(31, 31),
                "change after 31\u00a0days at the latest",
                "remplacer après 31\u00a0jours au plus tard");
        says(new OnRequest(), "on request", "sur demande");
    }

    @Test
    void itIsStoredAsJsonAndReadBack() {
        json(TWO_VISITS, "{\"how\":\"each-season\",\"seasons\":[\"cooling\",\"heating\"]}");
        json(
                new BeforeSeason("winter", Period.parse("P2M15D")),
                "{\"how\":\"before-season\",\"season\":\"winter\",\"lead\":\"P2M15D\"}");
        json(new EveryMonths(12, 9, 15), "{\"how\":\"every-months\",\"months\":12,\"min\":9,\"max\":15}");
        json(new TimesAYear(2), "{\"how\":\"times-a-year\",\"times\":2}");
        json(new CheckThenReplace(1, 3), "{\"how\":\"check-then-replace\",\"checkMonths\":1,\"capMonths\":3}");
        json(new Cadence.LookThenChange(49, 56), "{\"how\":\"look-then-change\",\"lookDays\":49,\"changeDays\":56}");
        json(new OnRequest(), "{\"how\":\"on-request\"}");
        for (String wrong : List.of(
                "",
                "{}",
                "[]",
                "{\"how\":\"weekly\"}",
                "{\"how\":\"every-months\",\"months\":0,\"min\":1,\"max\":1}",
                "{\"how\":\"times-a-year\"}",
                "{\"how\":\"each-season\",\"seasons\":[]}",
                "{\"how\":\"before-season\",\"season\":\"winter\",\"lead\":\"P0D\"}")) {
            assertThrows(IllegalArgumentException.class, () -> Cadence.ofJson(wrong), wrong);
        }
    }

    private static void says(Cadence cadence, String english, String french) {
        assertEquals(english, cadence.sentence(Climate.cold()).en());
        assertEquals(french, cadence.sentence(Climate.cold()).fr());
    }

    private static void json(Cadence cadence, String json) {
        assertEquals(json, cadence.json());
        assertEquals(cadence, Cadence.ofJson(json));
    }
}
