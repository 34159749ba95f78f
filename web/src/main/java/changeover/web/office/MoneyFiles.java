package changeover.web.office;

import changeover.billing.ledger.Period;
import jakarta.ws.rs.core.Response;

/** A table about a period as a file to keep: its name says what it is about, and nothing between here and there keeps it. */
final class MoneyFiles {

    private MoneyFiles() {}

    static Response csv(byte[] file, String name, Period period) {
        return Response.ok(file, "text/csv; charset=UTF-8")
                .header(
                        "Content-Disposition",
                        "attachment; filename=\"" + name + "-" + period.from() + "-" + period.until() + ".csv\"")
                .header("Cache-Control", "no-store")
                .build();
    }
}
