package changeover.web.session;

import changeover.billing.documents.Document;
import changeover.contracts.pictures.Picture;
import jakarta.ws.rs.core.Response;

/** How a paper or a photo is handed out: opened in the browser, and kept in no cache that others share. */
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

    /** A photo never changes under its name. */
    public static Response of(Picture photo) {
        return Response.ok(photo.jpeg(), "image/jpeg")
                .header("Cache-Control", "private, max-age=86400, immutable")
                .build();
    }
}
