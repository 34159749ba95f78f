package changeover.contracts.oldsheet;

import changeover.contracts.words.Checks;
import changeover.contracts.words.Folded;
import changeover.contracts.words.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Who lives where, as one row says it. */
final class PeopleReader {

    private static final int LONGEST_PHONE = 60;
    private static final String MAIL = "[^\\s@<>,;:\"()\\[\\]]+@[^\\s@<>,;:\"()\\[\\]]+\\.[^\\s@.<>,;:\"()\\[\\]]+";
    private static final String BETWEEN_NUMBERS = "\\s*(?:[/;|]|\\bou\\b|\\bor\\b)\\s*";

    private final Cells cells;
    private final SheetReading reading;
    private final String country;

    PeopleReader(Cells cells, SheetReading reading, String country) {
        this.cells = cells;
        this.reading = reading;
        this.country = country;
    }

    OldHome.Where where() {
        String street = cells.must(SheetField.STREET, Checks.LINE);
        String unit = cells.line(SheetField.UNIT_LABEL, Checks.LINE);
        String city = cells.must(SheetField.CITY, Checks.LINE);
        String name = cells.text(SheetField.NAME);
        String key = Folded.of(String.join(" ", street, unit == null ? "" : unit, city, name));
        return new OldHome.Where(key, street, unit, city, region(), postal(), country);
    }

    OldHome.Who who(OldHome.Where where) {
        String name = cells.must(SheetField.NAME, Checks.LINE);
        String phone = phone();
        String email = email();
        String told = phone != null ? phone.replaceAll("[^0-9]", "") : email != null ? Folded.of(email) : where.key();
        return new OldHome.Who(Folded.of(name + " " + told), name, language(), phone, email, cells.notes(Checks.NOTE));
    }

    private String region() {
        String said = cells.text(SheetField.REGION);
        if (said.isEmpty()) {
            return reading.region();
        }
        return WrittenWords.region(said, country).orElseGet(() -> {
            cells.fault(SheetField.REGION, Refusal.of("oldsheet.region", Map.of("word", shortened(said))));
            return reading.region();
        });
    }

    private @Nullable String postal() {
        String said = cells.text(SheetField.POSTAL);
        if (said.isEmpty()) {
            cells.remark(SheetField.POSTAL, Refusal.of("oldsheet.postal-missing"));
            return null;
        }
        return WrittenWords.postal(said, country).orElseGet(() -> {
            cells.remark(SheetField.POSTAL, Refusal.of("oldsheet.postal-left-out", Map.of("word", shortened(said))));
            cells.note(SheetField.POSTAL);
            return null;
        });
    }

    private String language() {
        String said = cells.text(SheetField.LANGUAGE);
        if (said.isEmpty()) {
            return reading.language();
        }
        return WrittenWords.language(said).orElseGet(() -> {
            cells.fault(SheetField.LANGUAGE, Refusal.of("oldsheet.language", Map.of("word", shortened(said))));
            return reading.language();
        });
    }

    private @Nullable String phone() {
        List<String> numbers = new ArrayList<>();
        for (String cell : cells.each(SheetField.PHONE)) {
            for (String one : cell.split(BETWEEN_NUMBERS)) {
                if (!one.isBlank()) {
                    WrittenTelephone.Read read = WrittenTelephone.read(one);
                    numbers.add(read.shown());
                    if (!read.sure()) {
                        cells.remark(
                                SheetField.PHONE, Refusal.of("oldsheet.phone-as-is", Map.of("word", shortened(one))));
                    }
                }
            }
        }
        String together = numbers.stream().distinct().collect(Collectors.joining(" / "));
        if (together.length() > LONGEST_PHONE) {
            cells.fault(SheetField.PHONE, Refusal.of("text.too-long", Map.of("max", LONGEST_PHONE)));
            return null;
        }
        return together.isEmpty() ? null : together;
    }

    private @Nullable String email() {
        String said = cells.line(SheetField.EMAIL, Checks.LINE);
        if (said != null && !said.matches(MAIL)) {
            cells.fault(SheetField.EMAIL, Refusal.of("text.not-mail"));
            return null;
        }
        return said;
    }

    /** Enough of a cell to know it again in a sentence. */
    static String shortened(String said) {
        return said.length() <= 40 ? said : said.substring(0, 40) + "…";
    }
}
