package changeover.web.session;

import java.util.List;
import java.util.Set;

/**
 * An accountant reads the money: its pages, its documents and its exports. They write nothing, and no home, key or code is
 * theirs to see.
 */
final class AccountantsReach {

    private static final Set<String> READING = Set.of("GET", "HEAD");

    /** The first words of the API's addresses that give documents, money and exports. */
    private static final Set<String> MONEY = Set.of(
            "billing-runs",
            "credits",
            "deposits",
            "earned",
            "earned.csv",
            "fees",
            "invoices",
            "journal",
            "journal.csv",
            "payments",
            "periods",
            "refunds",
            "statements",
            "tax-report",
            "taxes",
            "write-offs");

    private AccountantsReach() {}

    /** @param path as the door reads it: without escapes, empty or dotted parts */
    static boolean reads(String method, String path) {
        if (!READING.contains(method)) {
            return false;
        }
        List<String> parts = List.of(path.substring(Math.min(1, path.length())).split("/", -1));
        if (!parts.getFirst().equals("api")) {
            return parts.size() > 1 && parts.get(1).equals("money");
        }
        if (parts.size() < 4) {
            return false;
        }
        boolean ofACustomer = parts.size() == 6
                && parts.get(3).equals("customers")
                && parts.get(5).equals("statements");
        boolean aList = parts.size() == 6
                && parts.get(3).equals("exports")
                && parts.get(4).equals("lists")
                && ListFile.of(parts.get(5)).filter(ListFile::isMoney).isPresent();
        return ofACustomer || aList || MONEY.contains(parts.get(3));
    }
}
