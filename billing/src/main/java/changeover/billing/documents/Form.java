package changeover.billing.documents;

import org.openpdf.text.pdf.PdfTemplate;
import org.openpdf.text.pdf.PdfWriter;

/** A place in the file for a page's drawing; the drawing is written by {@link PaperFile}, not by the library. */
final class Form extends PdfTemplate {

    private static final int WRITTEN_BY_US = 0;

    Form(PdfWriter writer) {
        thisReference = writer.getPdfIndirectReference();
        type = WRITTEN_BY_US;
    }
}
