package changeover.billing.documents;

import changeover.contracts.pictures.Picture;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.openpdf.text.Document;
import org.openpdf.text.Rectangle;
import org.openpdf.text.pdf.PdfArray;
import org.openpdf.text.pdf.PdfDictionary;
import org.openpdf.text.pdf.PdfIndirectReference;
import org.openpdf.text.pdf.PdfName;
import org.openpdf.text.pdf.PdfNumber;
import org.openpdf.text.pdf.PdfStream;
import org.openpdf.text.pdf.PdfString;
import org.openpdf.text.pdf.PdfWriter;

/**
 * A paper that can be read in thirty years: PDF/A-3b (ISO 19005-3), every letter embedded, colours in sRGB, nothing fetched.
 */
final class PaperFile {

    static final float LETTER_WIDTH = 612;
    static final float LETTER_HEIGHT = 792;

    private static final int PAGE_LEVEL = 4;

    private final float width;
    private final float height;
    private final Map<Typeface, BitSet> used = Canvas.noLetters();
    private final List<Canvas> pages = new ArrayList<>();
    private final List<Picture> pictures = new ArrayList<>();

    PaperFile(float width, float height) {
        this.width = width;
        this.height = height;
    }

    static PaperFile letter() {
        return new PaperFile(LETTER_WIDTH, LETTER_HEIGHT);
    }

    Canvas newPage() {
        Canvas page = new Canvas(height, used);
        pages.add(page);
        return page;
    }

    List<Canvas> pages() {
        return pages;
    }

    /** The number under which {@link Canvas#picture} draws it; the same picture is kept once. */
    int picture(Picture picture) {
        int known = pictures.indexOf(picture);
        if (known >= 0) {
            return known;
        }
        pictures.add(picture);
        return pictures.size() - 1;
    }

    byte[] bytes(Locale language, String title, String author) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(48 * 1024);
        Document document = new Document(new Rectangle(width, height), 0, 0, 0, 0);
        PdfWriter writer = PdfWriter.getInstance(document, bytes);
        writer.setPdfVersion(PdfWriter.VERSION_1_7);
        writer.setFullCompression();
        Archive archive = new Archive(language, Letters.plain(title), Letters.plain(author));
        writer.setXmpMetadata(archive.xmp());
        document.open();
        try {
            archive.describe(writer);
            PdfIndirectReference resources = resources(writer);
            for (Canvas page : pages) {
                Form form = new Form(writer);
                writer.getDirectContent().addTemplate(form, 0, 0);
                writer.addToBody(drawing(page, resources), form.getIndirectReference());
                document.newPage();
            }
            document.close();
        } catch (IOException inMemory) {
            throw new UncheckedIOException(inMemory);
        }
        return bytes.toByteArray();
    }

    private PdfStream drawing(Canvas page, PdfIndirectReference resources) {
        PdfStream stream = new PdfStream(page.ops().packed(PAGE_LEVEL));
        stream.put(PdfName.FILTER, PdfName.FLATEDECODE);
        stream.put(PdfName.TYPE, PdfName.XOBJECT);
        stream.put(PdfName.SUBTYPE, PdfName.FORM);
        stream.put(PdfName.BBOX, new PdfArray(new float[] {0, 0, width, height}));
        stream.put(PdfName.RESOURCES, resources);
        return stream;
    }

    private PdfIndirectReference resources(PdfWriter writer) throws IOException {
        PdfDictionary fonts = new PdfDictionary();
        for (Typeface face : Typeface.values()) {
            BitSet letters = used.get(face);
            if (letters != null && !letters.isEmpty()) {
                fonts.put(new PdfName(face.resource()), face.cut(letters).writeTo(writer));
            }
        }
        PdfDictionary images = new PdfDictionary();
        for (int number = 0; number < pictures.size(); number++) {
            images.put(new PdfName("P" + number), image(writer, pictures.get(number)));
        }
        PdfDictionary resources = new PdfDictionary();
        resources.put(PdfName.FONT, fonts);
        if (!pictures.isEmpty()) {
            resources.put(PdfName.XOBJECT, images);
        }
        return writer.addToBody(resources).getIndirectReference();
    }

    private static PdfIndirectReference image(PdfWriter writer, Picture picture) throws IOException {
        PdfStream image = new PdfStream(picture.jpeg());
        image.put(PdfName.TYPE, PdfName.XOBJECT);
        image.put(PdfName.SUBTYPE, PdfName.IMAGE);
        image.put(PdfName.FILTER, PdfName.DCTDECODE);
        image.put(PdfName.WIDTH, new PdfNumber(picture.width()));
        image.put(PdfName.HEIGHT, new PdfNumber(picture.height()));
        image.put(PdfName.BITSPERCOMPONENT, new PdfNumber(8));
        image.put(PdfName.COLORSPACE, PdfName.DEVICERGB);
        return writer.addToBody(image).getIndirectReference();
    }

    static PdfString words(String text) {
        return new PdfString(text, PdfString.TEXT_UNICODE);
    }
}
