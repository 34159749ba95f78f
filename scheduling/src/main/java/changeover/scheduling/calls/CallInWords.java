package changeover.scheduling.calls;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Whoever goes there reads who rang, what is wrong, whether there is heat and who is at risk, before the caller's own words. */
public final class CallInWords {

    private CallInWords() {}

    /** For the visit that a call became. */
    public static String note(Call.Facts facts, Locale locale) {
        List<String> said = new ArrayList<>();
        said.add(facts.trouble().wording().in(locale) + ".");
        if (facts.heat() != Heat.UNKNOWN) {
            said.add(facts.heat().wording().in(locale) + ".");
        }
        Risk.of(facts.trouble(), facts.risks())
                .forEach(risk -> said.add(risk.wording().in(locale) + "."));
        said.add(sentence(facts.words()));
        boolean french = locale.getLanguage().equals("fr");
        said.add((french ? "A appelé\u00a0: " : "Rang: ") + facts.caller()
                + (facts.phone() == null ? "" : ", " + facts.phone()) + ".");
        if (facts.toldWords() != null) {
            said.add((french ? "A été dit du prix\u00a0: " : "Was told of the price: ") + sentence(facts.toldWords()));
        }
        return String.join(" ", said);
    }

    /** Whoever wrote no full stop meant one. */
    private static String sentence(String said) {
        return said.isEmpty() || !Character.isLetterOrDigit(said.codePointBefore(said.length())) ? said : said + ".";
    }
}
