package changeover.billing.bank;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import changeover.billing.ABusiness;
import changeover.contracts.PostgresForTests;
import changeover.contracts.words.Refused;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class KeptFilesTest {

    @Inject
    ABusiness business;

    @Inject
    Banks banks;

    @Inject
    BankFiles files;

    @Inject
    KeptFiles kept;

    @Inject
    BankLines lines;

    @Inject
    BankBooking booking;

    private UUID bank() {
        UUID bank = banks.named("Harbour Bank");
        banks.map(bank, BankLinesTest.COLUMNS);
        return bank;
    }

    private BankFiles.Taken bring(UUID bank, String... rows) {
        return files.take(bank, String.join("\n", rows).getBytes(StandardCharsets.UTF_8));
    }

    /** Brought again, the lines are new; those of which somebody said what they are stay and are known. */
    @Test
    void a_wrong_file_is_taken_back_but_for_what_was_said_of_it() {
        business.in(business.quebec(), () -> {
            String[] rows = {"2026-10-05,Rebate,3.21", "2026-10-06,Interest,0.41", "2026-10-06,Fee,-4.00"};
            assertEquals(new BankFiles.Taken(3, 0), bring(bank(), rows));
            booking.dismiss(lines.waiting(50).getFirst().id(), "The bank's own");
            KeptFiles.KeptFile file = kept.newest(5).getFirst();
            assertEquals("Harbour Bank 3 2", file.bank() + " " + file.lines() + " " + file.unsaid());
            assertEquals(2, kept.takeBack(file.id()));
            assertEquals(List.of(), lines.waiting(50));
            assertEquals(
                    "bank.file-said",
                    assertThrows(Refused.class, () -> kept.takeBack(file.id()))
                            .first()
                            .code());
            assertEquals(new BankFiles.Taken(2, 1), bring(bank(), rows));
            assertEquals(
                    "bank.no-file",
                    assertThrows(Refused.class, () -> kept.takeBack(UUID.randomUUID()))
                            .first()
                            .code());
        });
    }

    /** The specification promises one line a number; a bank that breaks it loses nobody's money. */
    @Test
    void two_amounts_under_one_number_of_the_bank_are_two_lines() {
        business.in(business.quebec(), () -> {
            UUID bank = banks.named("Two Bridges");
            String one = statement("10.00");
            assertEquals(new BankFiles.Taken(1, 0), files.take(bank, one.getBytes(StandardCharsets.UTF_8)));
            byte[] both = (statement("10.00").replace("</OFX>", "")
                            + statement("12.00").substring(statement("12.00").indexOf("<STMTTRN>")))
                    .getBytes(StandardCharsets.UTF_8);
            assertEquals(new BankFiles.Taken(1, 1), files.take(bank, both));
            assertEquals(new BankFiles.Taken(0, 2), files.take(bank, both));
            assertEquals(
                    List.of("10.00", "12.00"),
                    lines.waiting(50).stream()
                            .map(line -> line.amount().decimal())
                            .toList());
        });
    }

    private static String statement(String amount) {
        return "<OFX><CURDEF>CAD<ACCTID>7<STMTTRN><FITID>81<DTPOSTED>20261005<TRNAMT>" + amount
                + "<NAME>Rebate</STMTTRN></OFX>";
    }
}
