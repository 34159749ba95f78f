package changeover.web.session;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Every list of the business as a table to take along: its own keys, days as ISO dates, money as decimals of the row's currency
 * (what is asked for as {@code _minor}). The homes with their machines have a file of their own that comes in again.
 */
public enum ListFile {
    CUSTOMERS(Reach.OWNER),
    PEOPLE_OF_HOMES(Reach.OWNER),
    MACHINES(Reach.OWNER),
    HAZARDS(Reach.OWNER),
    SHUT_TIMES(Reach.OWNER),
    PLANS(Reach.OWNER),
    AGREEMENTS(Reach.OWNER),
    VISITS(Reach.OWNER),
    TASKS(Reach.OWNER),
    HOUSEHOLD_TASKS(Reach.OWNER),
    DONE(Reach.OWNER),
    TO_BE_READ(Reach.OWNER),
    READINGS(Reach.OWNER),
    FINDINGS(Reach.OWNER),
    FOLLOW_UPS(Reach.OWNER),
    AMENDMENTS(Reach.OWNER),
    STOPS(Reach.OWNER),
    DUTIES(Reach.OWNER),
    CALLS(Reach.OWNER),
    RETURN_VISITS(Reach.OWNER),
    ESTIMATES(Reach.OWNER),
    ESTIMATE_LINES(Reach.OWNER),
    PARTS_USED(Reach.OWNER),
    PARTS_GIVEN(Reach.OWNER),
    PART_ORDERS(Reach.OWNER),
    PART_RETURNS(Reach.OWNER),
    CLAIMS(Reach.OWNER),
    STOCK(Reach.OWNER),
    STOCK_MOVEMENTS(Reach.OWNER),
    PEOPLE(Reach.OWNER),
    INSTRUMENTS(Reach.OWNER),
    PARTNERS(Reach.OWNER),
    PARTNER_VISITS(Reach.OWNER),
    PAPERS(Reach.OWNER),
    INVOICES(Reach.MONEY),
    INVOICE_LINES(Reach.MONEY),
    INVOICE_TAXES(Reach.MONEY),
    PAYMENTS(Reach.MONEY),
    WHAT_PAYMENTS_PAY(Reach.MONEY),
    DEPOSITS(Reach.MONEY),
    WRITE_OFFS(Reach.MONEY),
    OPENINGS(Reach.MONEY);

    /** Who takes it: the owner alone, or whoever reads the books with them. */
    private enum Reach {
        OWNER,
        MONEY
    }

    private final Reach reach;

    ListFile(Reach reach) {
        this.reach = reach;
    }

    /** One statement over the rows of the current business. */
    String sql() {
        try (InputStream file = ListFile.class.getResourceAsStream("/lists/" + code() + ".sql")) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException cause) {
            throw new UncheckedIOException("the list could not be read: " + code(), cause);
        }
    }

    /** As its address and its file name it: {@code part-orders}. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static Optional<ListFile> of(String code) {
        return Arrays.stream(values()).filter(list -> list.code().equals(code)).findFirst();
    }

    /** Of documents and money, which an accountant takes too; no home's key, code or notes stand in them. */
    public boolean isMoney() {
        return reach == Reach.MONEY;
    }

    public static List<ListFile> ofMoney() {
        return Arrays.stream(values()).filter(ListFile::isMoney).toList();
    }
}
