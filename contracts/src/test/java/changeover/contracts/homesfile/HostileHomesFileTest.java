package changeover.contracts.homesfile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Locales;
import changeover.contracts.tenants.NewBusiness;
import changeover.contracts.tenants.Place;
import changeover.contracts.words.Refusals;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class HostileHomesFileTest {

    private static final String TITLES =
            "home,customer,language,phone,email,street,city,region,postal,country,latitude,longitude,access,"
                    + "unit,kind,make,model,serial,installed,fits,nameplate\r\n";

    /** What people and spreadsheets have been seen to put into a cell, and what nobody should. */
    private static final List<String> PIECES = List.of(
            "=1+1",
            "+44",
            "-2",
            "@sum",
            "'",
            "''=x",
            "\"",
            "\"\"",
            ",",
            ";",
            "\n",
            "\r\n",
            "é",
            "œ",
            "日",
            "\u202E",
            "\u2066",
            "<b>",
            "{x}",
            "\\",
            "' or 1=1 --",
            "%",
            "_",
            "a",
            "12",
            " ",
            "\uD83D\uDE00",
            "$1");

    @Inject
    CurrentTenant current;

    @Inject
    Businesses businesses;

    @Inject
    HomesImport imports;

    @Inject
    HomesExport exports;

    @Inject
    Homes homes;

    private UUID business() {
        UUID tenant = UUID.randomUUID();
        current.run(
                tenant,
                CurrentTenant.NOBODY,
                () -> businesses.open(
                        new NewBusiness(
                                "h" + tenant.toString().substring(0, 12),
                                "Kiln Lane",
                                "7 Kiln Lane",
                                Place.of("CA-ON"),
                                "en",
                                null,
                                null,
                                null,
                                null,
                                null,
                                true),
                        LocalDate.of(2026, 4, 1)));
        return tenant;
    }

    private HomesImport.Outcome bring(UUID tenant, String file) {
        return current.run(
                tenant,
                CurrentTenant.NOBODY,
                () -> imports.bring(file.getBytes(StandardCharsets.UTF_8), false, HomesImport.Bad.RETURN));
    }

    private String take(UUID tenant) {
        return new String(current.run(tenant, CurrentTenant.NOBODY, () -> exports.take(null)), StandardCharsets.UTF_8);
    }

    private static String cell(String text) {
        return "\"" + text.replace("\"", "\"\"") + "\"";
    }

    @Test
    void hostile_text_goes_in_and_comes_out_as_the_same_bytes() {
        var random = new Random(41);
        var file = new StringBuilder(TITLES);
        for (int home = 0; home < 120; home++) {
            file.append(cell("K" + home + hostile(random))).append(',').append(cell("C" + home + hostile(random)));
            file.append(",en,,,")
                    .append(cell("S" + hostile(random)))
                    .append(',')
                    .append(cell("V" + hostile(random)));
            file.append(",ON,,CA,,,,").append(cell("U" + hostile(random))).append(",filter-slot,");
            file.append(cell(hostile(random)))
                    .append(',')
                    .append(cell(hostile(random)))
                    .append(",,,,\r\n");
        }
        UUID tenant = business();
        var outcome = bring(tenant, file.toString());
        assertTrue(outcome.homes() > 0, outcome.faults().toString());
        String once = take(tenant);
        bring(tenant, once);
        assertEquals(once, take(tenant));
        UUID other = business();
        assertEquals(List.of(), bring(other, once).faults());
        assertEquals(once, take(other));
        System.out.println("hostile homes in: " + outcome.homes() + " of 120, seed 41");
    }

    private static String hostile(Random random) {
        var text = new StringBuilder();
        for (int piece = random.nextInt(5); piece > 0; piece--) {
            text.append(PIECES.get(random.nextInt(PIECES.size())));
        }
        return text.toString();
    }

    @Test
    void no_cell_that_goes_out_begins_a_formula() {
        UUID tenant = business();
        bring(tenant, TITLES + "'=H,'@C,en,,,'+street,'-city,ON,,CA,,,,'=U,filter-slot,'=make,,,,,\r\n");
        String out = take(tenant).lines().toList().getLast();
        for (String sign : List.of("=H", "@C", "+street", "-city", "=U", "=make")) {
            assertTrue(out.contains("'" + sign), out);
            assertFalse(out.contains("," + sign), out);
        }
    }

    @Test
    void what_cannot_be_printed_is_a_fault_in_both_languages() {
        UUID tenant = business();
        var outcome = bring(tenant, TITLES + "H1,A\u0000B,en,,,1 Kiln Lane,Port Ambrose,ON,,CA,,,,,,,,,,,\r\n");
        assertEquals(0, outcome.written());
        Fault fault = outcome.faults().getFirst();
        assertEquals("2 customer", fault.row() + " " + fault.column());
        String english = Refusals.sentence(fault.why(), Locales.ENGLISH);
        assertFalse(english.equals(Refusals.sentence(fault.why(), Locales.FRENCH)));
    }

    @Test
    void the_same_keys_in_another_business_are_other_homes() {
        String row = TITLES + "H1,Ida Roe,en,,,1 Kiln Lane,Port Ambrose,ON,,CA,,,,,,,,,,,\r\n";
        UUID first = business();
        UUID second = business();
        bring(first, row);
        bring(second, row.replace("1 Kiln Lane", "2 Kiln Lane"));
        assertTrue(take(first).contains("1 Kiln Lane"));
        assertFalse(take(first).contains("2 Kiln Lane"));
        assertEquals(1L, current.run(second, CurrentTenant.NOBODY, () -> homes.count()));
    }
}
