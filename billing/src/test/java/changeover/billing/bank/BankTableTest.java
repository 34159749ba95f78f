package changeover.billing.bank;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.words.Refused;
import java.math.BigDecimal;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Tables of four invented banks: columns, days, commas, signs. */
class BankTableTest {

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static String said(String file) {
        Columns columns = ColumnsGuess.of(bytes(file)).orElseThrow();
        return BankTable.read(bytes(file), columns, "CAD").stream()
                .map(line -> line.day() + " " + line.amount().toPlainString() + " " + line.words())
                .collect(Collectors.joining("; "));
    }

    @Test
    void a_first_reading_finds_days_amounts_and_words() {
        assertEquals(
                "2026-04-02 286.29 Transfer Ida Roe; 2026-04-03 -12.50 Fee",
                said("Date,Description,Amount\n2026-04-02,Transfer Ida Roe,286.29\n2026-04-03,Fee,-12.50\n"));
        assertEquals(
                "2026-04-30 1286.29 Virement Côté; 2026-05-01 -12.50 Frais",
                said(
                        "Compte 7\nDate;Libellé;Débit;Crédit\n30/04/2026;Virement Côté;;1 286,29\n01/05/2026;Frais;12,50;\n"));
        assertEquals(
                "2026-04-30 1286.29 Deposit; 2026-05-13 -1.00 Fee",
                said("04/30/2026\tDeposit\t1,286.29\n05/13/2026\tFee\t(1.00)\n"));
        assertTrue(ColumnsGuess.of(bytes("a,b\nc,d\n")).isEmpty());
    }

    @Test
    void a_table_that_stops_in_its_last_row_is_refused() {
        String rows = "Date,What,Amount\n2026-04-02,Ida,286.29\n2026-04-03,Fee,-12.50\n";
        Columns columns = new Columns(',', 1, 1, DayStyle.YEAR_MONTH_DAY, 3, null, false, List.of(2), null, null);
        for (String cut : List.of("2026-04-04,Jo,286.2", "2026-04-04,Jo,286.", "2026-04-04,Jo,2")) {
            assertEquals("bank.table-cut", refused(rows + cut, columns), cut);
            assertEquals(
                    3, BankTable.read(bytes(rows + cut + "\n"), columns, "CAD").size(), "whole: " + cut);
        }
        assertEquals(
                3,
                BankTable.read(bytes(rows + "2026-04-04,Jo,286.29"), columns, "CAD")
                        .size());
        String uneven = "Date,What,Amount\n2026-04-02,Ida,286.29\n2026-04-03,Fee,-12.5\n2026-04-04,Jo,7";
        assertEquals(3, BankTable.read(bytes(uneven), columns, "CAD").size(), "a bank that drops noughts");
        Columns between = new Columns(',', 1, 1, DayStyle.YEAR_MONTH_DAY, 2, null, false, List.of(3), null, null);
        String whole = "Date,Amount,What\n2026-04-02,45.99,Ida\n2026-04-03,120.49,Jo\n2026-04-04,75,Rent";
        assertEquals(3, BankTable.read(bytes(whole), between, "CAD").size(), "more stands behind the amount");
        String wide = "Date,Amount,What,Reference\n2026-04-02,5.00,Ida,1\n2026-04-03,6.00,Jo,2\n2026-04-04,7.00,Ma";
        Columns others = new Columns(',', 1, 1, DayStyle.YEAR_MONTH_DAY, 2, null, false, List.of(3), 4, null);
        assertEquals("bank.table-cut", refused(wide, others));
    }

    private static String refused(String file, Columns columns) {
        return assertThrows(Refused.class, () -> BankTable.read(bytes(file), columns, "CAD"))
                .first()
                .code();
    }

    @Test
    void amounts_as_banks_write_them() {
        amount("1,286.29", false, "1286.29");
        amount("1.286,29", true, "1286.29");
        amount("1\u00a0286,29 $", true, "1286.29");
        amount("12.50-", false, "-12.50");
        amount("(12.50)", false, "-12.50");
        amount("\u221212,50", true, "-12.50");
        amount("CAD 5", false, "5");
        amount("", false, "0");
        assertTrue(BankAmount.read("twelve", false).isEmpty());
        assertTrue(BankAmount.read("12.50.1", false).isEmpty());
        amount("1'286.29", false, "1286.29");
        amount("12.", false, "12");
        assertTrue(BankAmount.read("286,29", false).isEmpty(), "no hundredfold of it");
        assertTrue(BankAmount.read("286.29", true).isEmpty(), "no hundredfold of it");
        for (String none : List.of("NaN", "1e9", "(-1.00)", "--1", "9".repeat(40), "1,2,3", "=1+1")) {
            assertTrue(BankAmount.read(none, false).isEmpty(), none);
        }
    }

    private static void amount(String cell, boolean comma, String expected) {
        assertEquals(new BigDecimal(expected), BankAmount.read(cell, comma).orElseThrow(), cell);
    }

    @Test
    void two_alike_on_a_day_are_two_and_the_same_in_two_files_is_one() {
        Columns columns = new Columns(',', 1, 1, DayStyle.YEAR_MONTH_DAY, 3, null, false, List.of(2), null, null);
        String head = "Date,What,Amount\n";
        String one = "2026-04-02,Transfer,10.00\n";
        List<ReadLine> first = BankTable.read(bytes(head + one + one), columns, "CAD");
        List<ReadLine> again =
                BankTable.read(bytes(head + "2026-04-01,Transfer,10.00\n" + one + one + one), columns, "CAD");
        assertNotEquals(first.get(0).key(), first.get(1).key());
        assertEquals(List.of(first.get(0), first.get(1)), again.subList(1, 3));
        assertEquals(4, again.stream().map(ReadLine::key).distinct().count());
    }

    @Test
    void a_row_that_does_not_read_is_named() {
        Columns columns = new Columns(',', 0, 1, DayStyle.DAY_SLASH, 3, null, false, List.of(2), null, null);
        Refused refused = assertThrows(
                Refused.class, () -> BankTable.read(bytes("02/04/2026,A,1.00\n30/02/2026,B,2.00\n"), columns, "CAD"));
        assertEquals(
                "bank.row-day 2",
                refused.first().code() + " " + refused.first().facts().get("row"));
        refused = assertThrows(Refused.class, () -> BankTable.read(bytes("02/04/2026,A,one\n"), columns, "CAD"));
        assertEquals("bank.row-amount", refused.first().code());
        refused = assertThrows(
                Refused.class, () -> BankTable.read(bytes("02/04/2026,A,1.00\n03/04/2026,B\n"), columns, "CAD"));
        assertEquals("bank.row-amount", refused.first().code(), "cut off");
        refused = assertThrows(
                Refused.class, () -> BankTable.read(bytes("02/04/2026,\"A,1.00\n03/04/2026,B,2.00\n"), columns, "CAD"));
        assertEquals("bank.no-table", refused.first().code(), "a quote that never ends");
        assertThrows(Refused.class, () -> BankTable.read(new byte[5_000_001], columns, "CAD"));
        assertEquals(
                "Côté",
                BankTable.read("02/04/2026,Côté,1.00".getBytes(Charset.forName("windows-1252")), columns, "CAD")
                        .getFirst()
                        .words());
    }

    @Test
    void an_amount_of_another_currency_is_refused_in_its_row() {
        Columns columns = new Columns(',', 1, 1, DayStyle.YEAR_MONTH_DAY, 3, null, false, List.of(2), null, null);
        String head = "Date,What,Amount\n2026-04-02,Transfer,CAD 10.00\n";
        for (String cell : List.of("USD 5.00", "5.00 USD", "€5.00", "£ 5.00")) {
            Refused refused = assertThrows(
                    Refused.class,
                    () -> BankTable.read(bytes(head + "2026-04-03,Transfer," + cell + "\n"), columns, "CAD"));
            assertEquals(
                    "bank.row-currency file 3",
                    refused.first().code() + " " + refused.first().field() + " "
                            + refused.first().facts().get("row"),
                    cell);
        }
        assertEquals(
                1,
                BankTable.read(bytes("h\n2026-04-03,A,$5.00\n"), columns, "USD").size());
        assertEquals(
                1,
                BankTable.read(bytes("h\n2026-04-03,A,5.00 €\n"), columns, "EUR")
                        .size());
        assertThrows(Refused.class, () -> BankTable.read(bytes("h\n2026-04-03,A,$5.00\n"), columns, "EUR"));
    }

    @Test
    void a_column_may_say_how_the_money_came() {
        Columns columns = new Columns(';', 0, 1, DayStyle.YEAR_MONTH_DAY, 3, null, true, List.of(2), null, 4);
        way(columns, "CHEQUE 0412", "CHEQUE");
        way(columns, "Dépôt de chèque", "CHEQUE");
        way(columns, "Virement Interac", "TRANSFER");
        way(columns, "PRELEVEMENT", "DEBIT");
        way(columns, "Visa", "CARD");
        way(columns, "Espèces", "CASH");
        way(columns, "Dépôt au guichet", "null");
        way(columns, "", "null");
    }

    private static void way(Columns columns, String said, String expected) {
        assertEquals(
                expected,
                String.valueOf(BankTable.read(bytes("2026-04-02;A;1,00;" + said), columns, "CAD")
                        .getFirst()
                        .way()),
                said);
    }
}
