package changeover.contracts.oldsheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.money.Money;
import changeover.contracts.plans.PlanFacts;
import changeover.contracts.words.Refused;
import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class SheetLookTest {

    private static final SheetLook.Ground GROUND = new SheetLook.Ground(
            Catalogue.shipped(),
            List.of(new PlanFacts(
                    "two",
                    new Wording("Two turns", "Deux saisons"),
                    2,
                    Money.of("249.00", "CAD"),
                    BigDecimal.ZERO,
                    1,
                    0,
                    false,
                    List.of(),
                    List.of(),
                    List.of())),
            "CA",
            Currency.getInstance("CAD"),
            LocalDate.of(2026, 11, 30));

    private static final String TITLES =
            "Nom;Tél.;Courriel;Langue;Adresse;Ville;Prov.;C.P.;Appareil;Marque;Contrat;Début;Prix;Payé;Dernière visite;Notes\n";

    private static SheetLook look(String rows) {
        return look(rows, reading -> reading);
    }

    private static SheetLook look(String rows, java.util.function.UnaryOperator<SheetReading> said) {
        SheetTable table = SheetTable.of((TITLES + rows).getBytes(StandardCharsets.UTF_8));
        return SheetLook.of(table, said.apply(SheetReading.guessed(table, "QC", "fr")), GROUND);
    }

    private static SheetReading with(SheetReading old, String order, Map<String, String> kinds) {
        return new SheetReading(
                old.columns(), order, old.region(), old.language(), old.plan(), true, kinds, Map.of("or", "two"));
    }

    private static List<String> codes(List<SheetSaid> said) {
        return said.stream()
                .map(one -> one.row() + " " + one.column() + " " + one.what().code())
                .toList();
    }

    @Test
    void a_full_line_is_read_whole() {
        SheetLook look = look(
                "Anselm Birk ;(819) 555-0142;a.birk@example.com;Anglais; 12, rue  des Érables;Sainte-Odette;Québec;j0x1y0;Fournaise au gaz;Norrland;Or;2026-03-01;249,00 $;oui;14 octobre 2026;Chien doux\n",
                reading -> with(reading, "day", Map.of()));
        assertEquals(List.of(), codes(look.faults()));
        OldHome home = look.homes().getFirst();
        assertEquals("Anselm Birk", home.who().name());
        assertEquals("819-555-0142", home.who().phone());
        assertEquals("en", home.who().language());
        assertEquals("Chien doux", home.who().note());
        assertEquals("12, rue des Érables", home.where().street());
        assertEquals("QC", home.where().region());
        assertEquals("J0X 1Y0", home.where().postal());
        assertEquals(List.of(new OldHome.Unit("gas-furnace", "Norrland", null, null, null)), home.units());
        OldHome.Deal deal = Objects.requireNonNull(home.agreement());
        assertEquals(LocalDate.of(2026, 3, 1), deal.from());
        assertEquals(Money.of("249.00", "CAD"), deal.price());
        assertEquals(deal.price(), deal.paid());
        assertEquals(LocalDate.of(2026, 10, 14), deal.lastVisit());
    }

    @Test
    void what_may_mean_two_things_is_asked_and_never_guessed() {
        String row = "Ida Roe;;;;3 Mill Lane;Port Ambrose;ON;;;;Or;04/03/2026;1,000;300;;\n";
        assertEquals(
                List.of("2 Début oldsheet.day-twofold"),
                codes(look(row, reading -> {
                            SheetReading said = with(reading, "day", Map.of());
                            return new SheetReading(
                                    said.columns(), null, "QC", "fr", null, true, Map.of(), said.plans());
                        })
                        .faults()));
        assertEquals(
                List.of("2 Prix oldsheet.amount", "2 Payé oldsheet.paid-more"),
                codes(look(row, reading -> with(reading, "day", Map.of())).faults()));
    }

    @Test
    void words_of_their_own_are_named_once_by_a_person() {
        String row = "Ida Roe;;;;3 Mill Lane;Port Ambrose;ON;;Thermo;Brundle;;;;;;\n";
        SheetLook before = look(row);
        assertEquals(List.of("2 Appareil oldsheet.kind-unknown"), codes(before.faults()));
        assertEquals(Map.of("thermo", "Thermo"), before.kinds());
        SheetLook after = look(row, reading -> with(reading, "day", Map.of("thermo", "outdoor-heat-pump")));
        assertEquals(
                "outdoor-heat-pump", after.homes().getFirst().units().getFirst().kind());
        SheetLook unread = look(row, reading -> with(reading, "day", Map.of("thermo", "")));
        assertTrue(unread.homes().getFirst().toBeRead());
        assertEquals(
                "Appareil: Thermo\nMarque: Brundle",
                unread.homes().getFirst().who().note());
    }

    @Test
    void missing_postal_codes_and_machines_keep_no_home_out() {
        SheetLook look = look("Ida Roe;555-0142;;;3 Mill Lane;Port Ambrose;;;;;;;;;;\n");
        assertEquals(List.of(), codes(look.faults()));
        assertEquals(List.of("2 C.P. oldsheet.postal-missing", "2 Tél. oldsheet.phone-as-is"), codes(look.remarks()));
        assertTrue(look.homes().getFirst().toBeRead());
        assertNull(look.homes().getFirst().agreement());
        assertEquals("QC", look.homes().getFirst().where().region());
    }

    @Test
    void a_line_that_repeats_another_is_taken_once_and_one_that_contradicts_it_waits() {
        String row = "Ida Roe;819 555-0142;;;3 Mill Lane;Port Ambrose;ON;;;;;;;;;\n";
        SheetLook look = look(row
                + "IDA ROE;8195550142;;;3, Mill Lane;PORT AMBROSE;ON;;;;;;;;;\n"
                + row
                + "Ida Roe;819 555-0199;;;3 Mill Lane;Port Ambrose;ON;;;;;;;;;\n");
        assertEquals(1, look.homes().size());
        assertEquals(2, look.twice());
        assertEquals(List.of("5  oldsheet.home-twice"), codes(look.faults()));
    }

    @Test
    void an_agreement_that_is_over_is_only_noted() {
        SheetLook look =
                look("Ida Roe;;;;3 Mill Lane;Port Ambrose;ON;;;;Deux saisons;2025-03-01;249;oui;2025-10-02;\n");
        assertNull(look.homes().getFirst().agreement());
        assertEquals(
                "Contrat: Deux saisons\nDébut: 2025-03-01\nDernière visite: 2025-10-02",
                look.homes().getFirst().who().note());
    }

    @Test
    void old_letters_tabs_and_lines_above_the_titles_are_understood() {
        String text = "Clients 2026\t\t\n\nNom\tAdresse\tVille\nÉloïse Gagné\t8 côte du Moulin\tVal-Perdu\n";
        SheetTable table = SheetTable.of(text.getBytes(Charset.forName("windows-1252")));
        assertEquals(3, table.titleRow());
        assertEquals(List.of("Nom", "Adresse", "Ville"), table.titles());
        assertEquals(
                List.of("Éloïse Gagné", "8 côte du Moulin", "Val-Perdu"),
                table.rows().getFirst().cells());
        assertEquals(4, table.rows().getFirst().number());
    }

    @Test
    void what_is_no_table_is_refused() {
        for (String text : List.of("", "only one thing", "\"open;a\nb", "a\0;b")) {
            assertThrows(Refused.class, () -> SheetTable.of(text.getBytes(StandardCharsets.UTF_8)), text);
        }
    }
}
