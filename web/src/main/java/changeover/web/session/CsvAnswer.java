package changeover.web.session;

import changeover.billing.ledger.Period;
import jakarta.ws.rs.core.Response;

/** A table as a file to keep; nothing between here and there keeps it. */
public final class CsvAnswer {

    private CsvAnswer() {}

    /** @param name of the file, without its ending */
    public static Response of(byte[] file, String name) {
        return Response.ok(file, "text/csv;charset=UTF-8")
                .header("Content-Disposition", "attachment; filename=\"" + name + ".csv\"")
                .header("Cache-Control", "no-store")
                .build();
    }

    /** A table about a period: its name says the days. */
    public static Response of(byte[] file, String name, Period period) {
        return of(file, name + "-" + period.from() + "-" + period.until());
    }
}
