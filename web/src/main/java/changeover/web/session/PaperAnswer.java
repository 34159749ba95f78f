package changeover.web.session;

import changeover.billing.documents.Document;
import jakarta.ws.rs.core.Response;

/** How a paper is handed out: opened in the browser under its own name, and kept in no cache that others share. */
public final class PaperAnswer {

    private PaperAnswer() {}

    public static Response of(Document paper) {
        return of(paper.bytes(), paper.fileName());
    }

    /** @param fileName with its ending */
    public static Response of(byte[] pdf, String fileName) {
        return Response.ok(pdf, "application/pdf")
                .header("Content-Disposition", "inline; filename=\"" + fileName + "\"")
                .header("Cache-Control", "private, no-store")
                .build();
    }
}
