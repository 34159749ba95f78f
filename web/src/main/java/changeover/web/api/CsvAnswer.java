package changeover.web.api;

import jakarta.ws.rs.core.Response;

/** A table as a file to keep; nothing between here and there keeps it. */
final class CsvAnswer {

    private CsvAnswer() {}

    static Response of(byte[] file, String name) {
        return Response.ok(file, "text/csv; charset=UTF-8")
                .header("Content-Disposition", "attachment; filename=\"" + name + ".csv\"")
                .header("Cache-Control", "no-store")
                .build();
    }
}
