package changeover.billing.bank;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.words.Refused;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * Statements in the shape of the statement example of the Open Financial Exchange specification (1.0.2 and 1.6 as SGML, 2.1.1
 * as XML, chapter 11, "Bank Statement Example"; from memory): a cheque of 200.00 with number 1000 on 2005-10-04, a withdrawal of
 * 300.00 on 2005-10-20, the ledger balance 200.29.
 */
class OfxFileOutsideTest {

    private static final String SGML = """
            OFXHEADER:100
            DATA:OFXSGML
            VERSION:102
            SECURITY:NONE
            ENCODING:USASCII
            CHARSET:1252
            COMPRESSION:NONE
            OLDFILEUID:NONE
            NEWFILEUID:NONE

            <OFX><SIGNONMSGSRSV1><SONRS><STATUS><CODE>0<SEVERITY>INFO</STATUS><DTSERVER>20051029101003<LANGUAGE>ENG</SONRS>
            </SIGNONMSGSRSV1><BANKMSGSRSV1><STMTTRNRS><TRNUID>1001<STATUS><CODE>0<SEVERITY>INFO</STATUS><STMTRS>
            <CURDEF>USD
            <BANKACCTFROM><BANKID>121099999<ACCTID>999988<ACCTTYPE>CHECKING</BANKACCTFROM>
            <BANKTRANLIST><DTSTART>20051001<DTEND>20051028
            <STMTTRN><TRNTYPE>CHECK<DTPOSTED>20051004<TRNAMT>-200.00<FITID>00002<CHECKNUM>1000</STMTTRN>
            <STMTTRN><TRNTYPE>ATM<DTPOSTED>20051020120000.000[-5:EST]<DTUSER>20051020<TRNAMT>-300.00<FITID>00003</STMTTRN>
            <STMTTRN><TRNTYPE>CREDIT<DTPOSTED>20051021<TRNAMT>+1286,29<FITID>00004<NAME>C\u00f4t\u00e9 &amp; fils<MEMO>INV-7</STMTTRN>
            </BANKTRANLIST><LEDGERBAL><BALAMT>200.29<DTASOF>200510291120</LEDGERBAL></STMTRS></STMTTRNRS></BANKMSGSRSV1></OFX>
            """;

    private static final String XML = """
            <?xml version="1.0" encoding="UTF-8" standalone="no"?>
            <?OFX OFXHEADER="200" VERSION="211" SECURITY="NONE" OLDFILEUID="NONE" NEWFILEUID="NONE"?>
            <OFX><BANKMSGSRSV1><STMTTRNRS><STMTRS><CURDEF>USD</CURDEF>
            <BANKACCTFROM><BANKID>121099999</BANKID><ACCTID>999988</ACCTID><ACCTTYPE>CHECKING</ACCTTYPE></BANKACCTFROM>
            <BANKTRANLIST><DTSTART>20051001</DTSTART><DTEND>20051028</DTEND>
            <STMTTRN><TRNTYPE>CHECK</TRNTYPE><DTPOSTED>20051004</DTPOSTED><TRNAMT>-200.00</TRNAMT><FITID>00002</FITID><CHECKNUM>1000</CHECKNUM></STMTTRN>
            <STMTTRN><TRNTYPE>ATM</TRNTYPE><DTPOSTED>20051020</DTPOSTED><TRNAMT>-300.00</TRNAMT><FITID>00003</FITID></STMTTRN>
            <STMTTRN><TRNTYPE>CREDIT</TRNTYPE><DTPOSTED>20051021</DTPOSTED><TRNAMT>1286.29</TRNAMT><FITID>00004</FITID>
            <PAYEE><NAME>C&#244;t&#233; &amp; fils</NAME><CITY>Port Ambrose</CITY></PAYEE><BANKACCTTO><ACCTID>77</ACCTID></BANKACCTTO><MEMO>INV-7</MEMO></STMTTRN>
            </BANKTRANLIST><LEDGERBAL><BALAMT>200.29</BALAMT><DTASOF>200510291120</DTASOF></LEDGERBAL></STMTRS></STMTTRNRS></BANKMSGSRSV1></OFX>
            """;

    private static String said(byte[] file) {
        return OfxFile.read(file, "USD").stream()
                .map(line -> line.key() + " " + line.day() + " " + line.amount() + " " + line.words() + " "
                        + line.reference())
                .collect(Collectors.joining("\n"));
    }

    private static final String EXPECTED = """
            ofx:999988:00002 2005-10-04 -200.00 CHECK 1000 1000
            ofx:999988:00003 2005-10-20 -300.00 ATM null
            ofx:999988:00004 2005-10-21 1286.29 C\u00f4t\u00e9 & fils INV-7 null""";

    @Test
    void both_generations_say_the_same() {
        assertEquals(EXPECTED, said(SGML.getBytes(Charset.forName("windows-1252"))));
        assertEquals(EXPECTED, said(SGML.getBytes(StandardCharsets.UTF_8)));
        assertEquals(EXPECTED, said(XML.getBytes(StandardCharsets.UTF_8)));
    }

    /** TRNTYPE of the specification; a cheque's number says the same of a plain credit. */
    @Test
    void the_kind_of_a_line_says_how_it_was_paid() {
        assertEquals("CHEQUE null null", ways(SGML));
        assertEquals("DEBIT null null", ways(SGML.replace("CHECK<DT", "DIRECTDEBIT<DT")));
        assertEquals(
                "CHEQUE TRANSFER CARD",
                ways(SGML.replace(">ATM<", ">DIRECTDEP<").replace(">CREDIT<", ">POS<")));
        assertEquals(
                "CHEQUE CASH TRANSFER", ways(SGML.replace(">ATM<", ">CASH<").replace(">CREDIT<", ">XFER<")));
        assertEquals("CHEQUE null null", ways(SGML.replace("CHECK<DT", "DEP<DT")));
    }

    private static String ways(String file) {
        return OfxFile.read(file.getBytes(StandardCharsets.UTF_8), "USD").stream()
                .map(line -> String.valueOf(line.way()))
                .collect(Collectors.joining(" "));
    }

    private static void refused(String code, String file) {
        Refused refused = assertThrows(Refused.class, () -> OfxFile.read(file.getBytes(StandardCharsets.UTF_8), "USD"));
        assertEquals(code, refused.first().code());
    }

    @Test
    void nothing_outside_is_followed_and_nothing_half_is_kept() {
        refused(
                "bank.ofx-declares",
                "<?xml version=\"1.0\"?><!DOCTYPE OFX [<!ENTITY x SYSTEM \"file:///etc/hostname\">]><OFX><MEMO>&x;</MEMO></OFX>");
        refused("bank.ofx-line", XML.replace("<FITID>00003</FITID>", ""));
        refused("bank.ofx-line", XML.replace("20051020", "20051320"));
        refused("bank.ofx-line", XML.replace("-300.00", "1,300.00"));
        refused("bank.currency", XML.replace("<CURDEF>USD", "<CURDEF>CAD"));
        refused("bank.no-ofx", "OFXHEADER:100");
        refused("bank.ofx-cut", XML.substring(0, XML.indexOf("</STMTTRN>") + 12));
        refused("bank.ofx-cut", XML.replaceFirst("</STMTTRN>", ""));
    }

    /** CURRENCY says in what the amount of a line is; ORIGCURRENCY only what it was before the bank converted it. */
    @Test
    void no_line_and_no_statement_of_a_file_is_in_another_currency() {
        String two = XML.replace(
                "</BANKMSGSRSV1>", XML.substring(XML.indexOf("<STMTTRNRS>"), XML.indexOf("</BANKMSGSRSV1>")));
        refused("bank.currency", two.replaceFirst("<CURDEF>USD", "<CURDEF>CAD") + "</BANKMSGSRSV1></OFX>");
        String foreign = "<CURRENCY><CURRATE>1.3</CURRATE><CURSYM>CAD</CURSYM></CURRENCY></STMTTRN>";
        refused("bank.currency", XML.replaceFirst("</STMTTRN>", foreign));
        assertEquals(
                EXPECTED,
                said(XML.replaceFirst("</STMTTRN>", foreign.replace("CURRENCY", "ORIGCURRENCY"))
                        .getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void a_table_that_names_the_letters_is_none() {
        assertFalse(OfxFile.isOne("2026-04-02,Roofxperts Ltd,10.00".getBytes(StandardCharsets.UTF_8)));
        assertTrue(OfxFile.isOne(SGML.getBytes(StandardCharsets.UTF_8)));
        assertTrue(OfxFile.isOne(XML.getBytes(StandardCharsets.UTF_8)));
    }
}
