package changeover.contracts.oldsheet;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A telephone number in one style: ten figures in three groups, an extension behind; anything else stays as it was written. */
final class WrittenTelephone {

    private static final Pattern NORTH_AMERICAN = Pattern.compile(
            "\\+?1?[\\s.\\-]*\\(?(\\d{3})\\)?[\\s.\\-]*(\\d{3})[\\s.\\-]*(\\d{4})"
                    + "(?:[\\s,;.]*(?:poste|post|p|ext|extension|x|#)[\\s.:#]*(\\d{1,6}))?",
            Pattern.CASE_INSENSITIVE);

    /** @param sure whether it was one number and no more */
    record Read(String shown, boolean sure) {}

    private WrittenTelephone() {}

    static Read read(String said) {
        Matcher number = NORTH_AMERICAN.matcher(said.strip());
        if (!number.matches()) {
            return new Read(said.strip(), false);
        }
        String plain = number.group(1) + "-" + number.group(2) + "-" + number.group(3);
        return new Read(number.group(4) == null ? plain : plain + " ext " + number.group(4), true);
    }
}
