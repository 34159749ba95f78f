package changeover.billing.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/** A paper judged by two readers that are not ours: veraPDF says if it is PDF/A-3b, PDFBox what one can read on it. */
final class Judged {

    static {
        VeraGreenfieldFoundryProvider.initialise();
    }

    private Judged() {}

    /** Fails with the clauses that the paper breaks; keeps the paper in target/papers to be looked at. */
    static String archived(String name, byte[] pdf) {
        try {
            Path folder = Files.createDirectories(Path.of("target", "papers"));
            Files.write(folder.resolve(name + ".pdf"), pdf);
            assertEquals(Set.of(), broken(pdf), name + " is PDF/A-3b");
            return text(pdf);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    static String text(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFTextStripper reader = new PDFTextStripper();
            reader.setSortByPosition(true);
            return reader.getText(document).replace('\u00a0', ' ');
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    static int pages(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return document.getNumberOfPages();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static Set<String> broken(byte[] pdf) {
        Set<String> broken = new TreeSet<>();
        try (PDFAParser parser =
                        Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), PDFAFlavour.PDFA_3_B);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(PDFAFlavour.PDFA_3_B, false)) {
            ValidationResult result = validator.validate(parser);
            for (TestAssertion assertion : result.getTestAssertions()) {
                broken.add(assertion.getRuleId() + " " + assertion.getMessage());
            }
            if (!result.isCompliant() && broken.isEmpty()) {
                broken.add("not compliant");
            }
        } catch (Exception unreadable) {
            broken.add(unreadable.toString());
        }
        return broken;
    }
}
