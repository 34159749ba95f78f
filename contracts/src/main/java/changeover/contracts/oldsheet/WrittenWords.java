package changeover.contracts.oldsheet;

import changeover.contracts.words.Folded;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Languages, provinces, postal codes, and a plain yes or no, in the words of either language or as codes. */
final class WrittenWords {

    private static final Map<String, String> LANGUAGES = spread(
            "fr", "f|fr|fre|fra|fran|francais|francaise|francophone|french|franco",
            "en", "e|a|en|eng|ang|anglais|anglaise|anglophone|english|anglo");

    private static final Map<String, String> PROVINCES = spread(
            "QC", "qc|qe|que|quebec|pq|p q|qu|province de quebec|province of quebec",
            "ON", "on|ont|ontario",
            "NB", "nb|n b|new brunswick|nouveau brunswick",
            "NS", "ns|n s|ne|nova scotia|nouvelle ecosse",
            "PE", "pe|pei|p e i|ipe|prince edward island|ile du prince edouard",
            "NL", "nl|nf|nfld|newfoundland|newfoundland and labrador|terre neuve|terre neuve et labrador",
            "MB", "mb|man|manitoba",
            "SK", "sk|sask|saskatchewan",
            "AB", "ab|alb|alta|alberta",
            "BC", "bc|b c|cb|c b|british columbia|colombie britannique",
            "YT", "yt|yukon",
            "NT", "nt|nwt|tno|northwest territories|territoires du nord ouest",
            "NU", "nu|nunavut");

    private static final Map<String, String> ANSWERS = spread(
            "yes", "yes|y|oui|o|x|paid|paye|payee|paid in full|paye au complet|complet|full|ok",
            "no", "no|n|non|none|aucun|aucune|unpaid|impaye|rien|nothing|n a|na|0|nil");

    private static final Pattern CANADIAN =
            Pattern.compile("[ABCEGHJ-NPRSTVXY]\\d[ABCEGHJ-NPRSTV-Z]\\d[ABCEGHJ-NPRSTV-Z]\\d");
    private static final Pattern REGION = Pattern.compile("[A-Z0-9]{1,3}");

    private WrittenWords() {}

    /** {@code en} or {@code fr}. */
    static Optional<String> language(String said) {
        return Optional.ofNullable(LANGUAGES.get(Folded.of(said)));
    }

    /** As ISO 3166-2 writes it after the hyphen; outside Canada codes only. */
    static Optional<String> region(String said, String country) {
        if (country.equals("CA")) {
            return Optional.ofNullable(PROVINCES.get(Folded.of(said)));
        }
        String code = said.strip().toUpperCase(Locale.ROOT);
        return REGION.matcher(code).matches() ? Optional.of(code) : Optional.empty();
    }

    static Optional<String> postal(String said, String country) {
        if (!country.equals("CA")) {
            return said.length() <= 20 ? Optional.of(said) : Optional.empty();
        }
        String bare = said.toUpperCase(Locale.ROOT).replaceAll("[^A-Z0-9]", "");
        return CANADIAN.matcher(bare).matches()
                ? Optional.of(bare.substring(0, 3) + " " + bare.substring(3))
                : Optional.empty();
    }

    static boolean isYes(String said) {
        return "yes".equals(ANSWERS.get(Folded.of(said)));
    }

    /** Nothing, said in one of its ways; a lone dash too. */
    static boolean isNo(String said) {
        String plain = Folded.of(said);
        return plain.isEmpty() || "no".equals(ANSWERS.get(plain));
    }

    private static Map<String, String> spread(String... codesAndWords) {
        Map<String, String> spread = new HashMap<>();
        for (int at = 0; at < codesAndWords.length; at += 2) {
            for (String word : codesAndWords[at + 1].split("\\|")) {
                spread.put(word, codesAndWords[at]);
            }
        }
        return Map.copyOf(spread);
    }
}
