package changeover.billing.bank;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.ABusiness;
import changeover.contracts.PostgresForTests;
import changeover.contracts.words.Refused;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** Whatever a file holds, it is kept whole or refused with a sentence. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class HostileBankFilesTest {

    private static final Columns COLUMNS =
            new Columns(',', 0, 1, DayStyle.YEAR_MONTH_DAY, 3, null, false, List.of(2), 4, null);

    private static final String OFX = """
            OFXHEADER:100
            <OFX><STMTRS><CURDEF>CAD<BANKACCTFROM><ACCTID>%s</BANKACCTFROM><BANKTRANLIST>
            <STMTTRN><TRNTYPE>CREDIT<DTPOSTED>20261001<TRNAMT>%s<FITID>%s<NAME>%s<MEMO>%s</STMTTRN>
            </BANKTRANLIST></STMTRS></OFX>""";

    @Inject
    ABusiness business;

    @Inject
    Banks banks;

    @Inject
    BankFiles files;

    private UUID bank() {
        UUID bank = banks.named("Harbour Bank");
        banks.map(bank, COLUMNS);
        return bank;
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private void refused(UUID bank, String code, String file) {
        assertEquals(
                code,
                assertThrows(Refused.class, () -> files.take(bank, bytes(file)))
                        .first()
                        .code(),
                file);
    }

    private String kept() {
        return business.one(
                "select string_agg(amount_minor || ' ' || words, '; ' order by amount_minor) from bank_line");
    }

    @Test
    void a_part_of_a_coin_is_refused_in_its_row() {
        business.in(business.quebec(), () -> {
            UUID bank = bank();
            for (String amount : List.of("0.001", "-0.004", "0.005", "5.005", "-5.015")) {
                refused(bank, "bank.row-cents", "2026-10-01,Ida,1.00,\n2026-10-01,Interest," + amount + ",");
                refused(bank, "bank.ofx-cents", OFX.formatted("7", amount, "1", "Interest", ""));
            }
            refused(bank, "bank.nothing", "2026-10-01,Interest,0.000,");
            assertEquals(
                    1, files.take(bank, bytes("2026-10-01,Interest,0.0100,")).fresh());
            assertEquals("1 Interest", kept());
        });
    }

    @Test
    void more_than_anything_that_is_owed_is_refused_in_its_row() {
        business.in(business.quebec(), () -> {
            UUID bank = bank();
            for (String sign : List.of("", "-")) {
                refused(bank, "bank.row-too-much", "2026-10-01,Ida,1.00,\n2026-10-01,Ida," + sign + "100000000.00,");
                refused(bank, "bank.ofx-too-much", OFX.formatted("7", sign + "999999999999.99", "1", "Ida", ""));
            }
            assertEquals(
                    2,
                    files.take(bank, bytes("2026-10-01,Ida,99999999.99,\n2026-10-01,Ida,-99999999.99,"))
                            .fresh());
        });
    }

    @Test
    void letters_that_are_none_are_left_out() {
        business.in(business.quebec(), () -> {
            String file = OFX.formatted("7&#55357;", "1.00", "1&#0;", "Ida&#55357; Roe&#8238;", "=1+1 <b &#1114112;");
            assertEquals(
                    1,
                    files.take(bank(), bytes(file.replace("<b ", "&lt;b&gt; "))).fresh());
            assertEquals("100 Ida Roe =1+1 <b>", kept());
        });
        business.in(business.quebec(), () -> {
            assertEquals(
                    1,
                    files.take(bank(), bytes("2026-10-01," + "a".repeat(499) + "\uD83D\uDE00,2.00,"))
                            .fresh());
            assertEquals("200 " + "a".repeat(499), kept());
        });
    }

    @Test
    void days_and_sizes_out_of_the_world_are_refused() {
        business.in(business.quebec(), () -> {
            UUID bank = bank();
            for (String day : List.of("0001-01-01", "9999-12-31", "2026-02-30", "", "NaN")) {
                refused(bank, "bank.row-day", day + ",Fee,1.00,");
            }
            refused(bank, "bank.day-to-come", "2199-01-01,Fee,1.00,");
            refused(bank, "bank.too-large", "2026-10-01,Fee,1.00,\n".repeat(100_000));
            refused(bank, "bank.too-large", "x".repeat(6_000_000));
            refused(bank, "bank.no-text", "2026-10-01,F\0ee,1.00,");
            refused(bank, "bank.ofx-declares", "<OFX><!ENTITY a \"&b;&b;\"></OFX>");
            assertEquals("0", business.one("select count(*) from bank_line"));
        });
    }

    /** Bytes without any sense, and a good file with some bytes spoiled or its end cut off. */
    @Test
    void noise_is_kept_whole_or_refused() {
        long seed = System.nanoTime();
        Random random = new Random(seed);
        business.in(business.quebec(), () -> {
            UUID table = bank();
            UUID statement = banks.named("Lake Bank");
            for (int time = 0; time < 300; time++) {
                boolean ofx = random.nextBoolean();
                byte[] file = bytes(
                        ofx
                                ? OFX.formatted("7", "12.34", "n" + time, "Ida Roe", "Caf\u00e9")
                                : "2026-10-01,Ida Roe,12.34,n" + time + "\n2026-10-02,Fee,-1.00,\n");
                byte[] spoiled = java.util.Arrays.copyOf(file, file.length - random.nextInt(2) * random.nextInt(40));
                for (int at = 0; at < random.nextInt(6); at++) {
                    spoiled[random.nextInt(spoiled.length)] = (byte) random.nextInt(256);
                }
                try {
                    files.take(ofx ? statement : table, spoiled);
                } catch (Refused refused) {
                    assertTrue(refused.first().code().startsWith("bank."), "seed " + seed + " " + refused);
                }
            }
        });
    }
}
