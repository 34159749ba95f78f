package changeover.billing.documents;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Objects;
import org.openpdf.text.pdf.PdfArray;
import org.openpdf.text.pdf.PdfDictionary;
import org.openpdf.text.pdf.PdfName;
import org.openpdf.text.pdf.PdfNumber;
import org.openpdf.text.pdf.PdfStream;
import org.openpdf.text.pdf.PdfString;
import org.openpdf.text.pdf.PdfWriter;

/** What makes a file a PDF/A-3b: it says so in its own metadata, and names the colours it means (sRGB). */
record Archive(Locale language, String title, String author) {

    private static final String PRODUCER = "Changeover";
    private static final byte[] SRGB = Packed.bytes(profile());
    private static final String XMP = """
            <?xpacket begin="\ufeff" id="W5M0MpCehiHzreSzNTczkc9d"?>
            <x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
            <rdf:Description rdf:about="" xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/">
            <pdfaid:part>3</pdfaid:part><pdfaid:conformance>B</pdfaid:conformance></rdf:Description>
            <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/">
            <dc:title><rdf:Alt><rdf:li xml:lang="x-default">%1$s</rdf:li></rdf:Alt></dc:title>
            <dc:creator><rdf:Seq><rdf:li>%2$s</rdf:li></rdf:Seq></dc:creator>
            <dc:language><rdf:Bag><rdf:li>%3$s</rdf:li></rdf:Bag></dc:language></rdf:Description>
            <rdf:Description rdf:about="" xmlns:pdf="http://ns.adobe.com/pdf/1.3/">
            <pdf:Producer>%4$s</pdf:Producer></rdf:Description>
            </rdf:RDF></x:xmpmeta>
            <?xpacket end="w"?>""";

    /** The curve of sRGB as a formula in place of a table: 480 bytes, where the platform's own has 6,876. */
    private static byte[] profile() {
        try (InputStream bytes = Archive.class.getResourceAsStream("colours/sRGB-v4.icc")) {
            return Objects.requireNonNull(bytes).readAllBytes();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    byte[] xmp() {
        return XMP.formatted(escaped(title), escaped(author), language.toLanguageTag(), PRODUCER)
                .getBytes(StandardCharsets.UTF_8);
    }

    /** Title, author, language and colours, where a reader of the file looks for them. */
    void describe(PdfWriter writer) throws IOException {
        PdfDictionary info = writer.getInfo();
        info.remove(PdfName.CREATIONDATE);
        info.remove(PdfName.MODDATE);
        info.put(PdfName.PRODUCER, new PdfString(PRODUCER));
        info.put(PdfName.TITLE, PaperFile.words(title));
        info.put(PdfName.AUTHOR, PaperFile.words(author));
        PdfStream profile = new PdfStream(SRGB);
        profile.put(PdfName.FILTER, PdfName.FLATEDECODE);
        profile.put(PdfName.N, new PdfNumber(3));
        PdfDictionary intent = new PdfDictionary(PdfName.OUTPUTINTENT);
        intent.put(PdfName.S, PdfName.GTS_PDFA1);
        intent.put(PdfName.OUTPUTCONDITIONIDENTIFIER, new PdfString("sRGB IEC61966-2.1"));
        intent.put(PdfName.INFO, new PdfString("sRGB IEC61966-2.1"));
        intent.put(PdfName.DESTOUTPUTPROFILE, writer.addToBody(profile).getIndirectReference());
        PdfDictionary catalog = writer.getExtraCatalog();
        catalog.put(PdfName.OUTPUTINTENTS, new PdfArray(intent));
        catalog.put(PdfName.LANG, new PdfString(language.toLanguageTag()));
        writer.setViewerPreferences(PdfWriter.DisplayDocTitle);
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
