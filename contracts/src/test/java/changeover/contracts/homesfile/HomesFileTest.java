package changeover.contracts.homesfile;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.NewBusiness;
import changeover.contracts.tenants.Place;
import changeover.contracts.words.Refused;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class HomesFileTest {

    private static final String TITLES =
            "home,customer,language,phone,email,street,city,region,postal,country,latitude,longitude,access,"
                    + "unit,kind,make,model,serial,installed,fits,nameplate";

    private static final String PLAIN = TITLES + "\r\n"
            + "H1,Anselm Birk,en,555-0142,anselm@example.com,9 Tannery Row,Port Ambrose,ON,K0X 0X0,CA,45.01,-75.5,,"
            + "Filter,filter-slot,Brundle,FS-4,,2021-06-15,size=16x25x4; direction=right,\r\n"
            + "H1,Anselm Birk,en,555-0142,anselm@example.com,9 Tannery Row,Port Ambrose,ON,K0X 0X0,CA,45.01,-75.5,,"
            + "Heat pump,outdoor-heat-pump,Norrland,NX-36,NX36-001,,drive=inverter,volts=240\r\n"
            + "H2,\"Birk, Odile \"\"Oda\"\"\",fr,+1 555 555-0143,,\"'=12, rue des Mélèzes\",Sainte-Odette,QC,,CA,,,,,,,,,,,\r\n";

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

    private <T> T in(UUID tenant, Callable<T> work) {
        return current.run(tenant, UUID.fromString("11111111-1111-4111-8111-111111111111"), work);
    }

    private UUID business(String slug) {
        UUID tenant = UUID.randomUUID();
        in(
                tenant,
                () -> businesses.open(
                        new NewBusiness(
                                slug, slug, "1 Kiln Lane", Place.of("CA-ON"), "en", null, null, null, null, null, true),
                        LocalDate.of(2026, 4, 1)));
        return tenant;
    }

    private HomesImport.Outcome bring(UUID tenant, String file, boolean dry, HomesImport.Bad bad) {
        return in(tenant, () -> imports.bring(file.getBytes(StandardCharsets.UTF_8), dry, bad));
    }

    private String take(UUID tenant, @Nullable String why) {
        return new String(in(tenant, () -> exports.take(why)), StandardCharsets.UTF_8);
    }

    @Test
    void what_went_in_comes_out_and_in_again_as_the_same_bytes() {
        UUID tenant = business("file-a");
        var outcome = bring(tenant, PLAIN, false, HomesImport.Bad.REFUSE);
        assertEquals(List.of(), outcome.faults());
        assertEquals(3, outcome.written());
        String once = take(tenant, null);
        assertEquals(PLAIN, once);
        bring(tenant, once, false, HomesImport.Bad.REFUSE);
        assertEquals(once, take(tenant, null));
        UUID other = business("file-b");
        bring(other, once, false, HomesImport.Bad.REFUSE);
        assertArrayEquals(
                once.getBytes(StandardCharsets.UTF_8), take(other, null).getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void a_mark_semicolons_and_plain_line_ends_are_understood() {
        UUID tenant = business("file-c");
        var outcome = bring(
                tenant,
                "\uFEFFhome;customer;street;city;region;country\nA;Ida Roe;1 Kiln Lane;Port Ambrose;ON;CA\n",
                false,
                HomesImport.Bad.REFUSE);
        assertEquals(1, outcome.homes());
    }

    @Test
    void bad_rows_are_named_and_come_back_while_good_ones_go_in() {
        UUID tenant = business("file-d");
        String bad = PLAIN + "H3,Ida Roe,de,555-0144,,3 Mill Lane,Port Ambrose,ON,,CA,,,,Thing,no-such-kind,,,,,,\r\n"
                + "H4,Ida Roe2,en,555-0144,,,Port Ambrose,ON,,CA,99,,,F,filter-slot,,,,2021-13-01,size16,\r\n";
        var refused = bring(tenant, bad, false, HomesImport.Bad.REFUSE);
        assertEquals(0, refused.written());
        assertEquals(0L, in(tenant, () -> homes.count()));
        var returned = bring(tenant, bad, false, HomesImport.Bad.RETURN);
        assertEquals(3, returned.written());
        assertEquals(2L, in(tenant, () -> homes.count()));
        assertEquals(
                List.of("5 language", "5 kind", "6 street", "6 latitude", "6 installed", "6 fits"),
                returned.faults().stream().map(f -> f.row() + " " + f.column()).toList());
        assertEquals(
                3,
                new String(returned.badRows(), StandardCharsets.UTF_8).lines().count());
    }

    @Test
    void a_dry_run_writes_nothing() {
        UUID tenant = business("file-e");
        assertEquals(3, bring(tenant, PLAIN, true, HomesImport.Bad.REFUSE).written());
        assertEquals(0L, in(tenant, () -> homes.count()));
    }

    @Test
    void codes_go_out_only_when_asked_for_and_come_in_again() {
        UUID tenant = business("file-f");
        String coded = PLAIN.replace("45.01,-75.5,,", "45.01,-75.5,code front door=12\\;34; key neighbour=at 16,");
        assertEquals(
                List.of(), bring(tenant, coded, false, HomesImport.Bad.REFUSE).faults());
        assertEquals(PLAIN, take(tenant, null));
        assertEquals(coded, take(tenant, "moving to another system"));
    }

    @Test
    void what_is_no_homes_file_is_refused_in_a_sentence() {
        UUID tenant = business("file-g");
        for (String file : List.of("", "a,b\r\n1,2\r\n", TITLES + ",home\r\n", "home;customer\n", "home,\"x")) {
            assertThrows(Refused.class, () -> bring(tenant, file, false, HomesImport.Bad.REFUSE));
        }
        assertThrows(
                Refused.class,
                () -> in(tenant, () -> imports.bring(new byte[] {'h', (byte) 0xff}, true, HomesImport.Bad.REFUSE)));
    }

    @Test
    void five_thousand_homes_go_in_within_a_minute() {
        UUID tenant = business("file-h");
        var file = new StringBuilder(TITLES).append("\r\n");
        for (int home = 0; home < 5000; home++) {
            for (String unit : List.of(
                    "Filter,filter-slot,,,,,size=16x25x4,",
                    "HRV,hrv,,,,,,",
                    "Heat pump,outdoor-heat-pump,Norrland,NX,S" + home + ",,,")) {
                file.append("H%05d,Customer %d,en,555-01%02d,,%d Larch Street,Port Ambrose,ON,,CA,,,,"
                                .formatted(home, home, home % 100, home))
                        .append(unit)
                        .append("\r\n");
            }
        }
        long start = System.nanoTime();
        var outcome = bring(tenant, file.toString(), false, HomesImport.Bad.REFUSE);
        double seconds = (System.nanoTime() - start) / 1e9;
        System.out.printf("5,000 homes, 15,000 units: %.1f s%n", seconds);
        assertEquals(15_000, outcome.units());
        assertTrue(seconds < 60, "took " + seconds);
        assertEquals(file.toString(), take(tenant, null));
    }
}
