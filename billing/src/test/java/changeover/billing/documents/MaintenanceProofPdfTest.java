package changeover.billing.documents;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Proof of maintenance on paper, in both languages, over more than one page. */
class MaintenanceProofPdfTest {

    private static ProofSheet sheet(Locale locale, int days) {
        return new ProofSheet(
                locale,
                "Northlamp",
                List.of("1 Kiln Lane, Port Ambrose", "555-0100"),
                LocalDate.of(2026, 12, 1),
                "12 Fen Road, Port Ambrose",
                List.of("QC"),
                List.of(new ProofSheet.Machine("Heat pump", "Norrland, NX-36, SN-4711")),
                IntStream.range(0, days)
                        .mapToObj(at -> new ProofSheet.Day(
                                LocalDate.of(2026, 11, 30).minusMonths(at),
                                at % 3 == 2 ? "Mara Quill" : "Ida Roe",
                                at % 3 == 2,
                                List.of("Heat pump: outdoor coil cleaned, fins straightened", "drain ran freely")))
                        .toList());
    }

    @Test
    void it_says_what_was_done_when_and_by_whom() {
        String english = Judged.archived("proof-en", MaintenanceProofPdf.bytes(sheet(Locale.CANADA, 40)));
        for (String said :
                List.of("Proof of maintenance", "30 November 2026", "Ida Roe.", "The household (Mara Quill)")) {
            assertTrue(english.contains(said), said + " in\n" + english);
        }
        String french = Judged.archived("proof-fr", MaintenanceProofPdf.bytes(sheet(Locale.CANADA_FRENCH, 2)));
        for (String said : List.of("Preuve d’entretien", "30 novembre 2026", "12 Fen Road")) {
            assertTrue(french.contains(said), said + " in\n" + french);
        }
        assertTrue(Judged.archived("proof-none", MaintenanceProofPdf.bytes(sheet(Locale.CANADA, 0)))
                .contains("Nothing was written down"));
    }
}
