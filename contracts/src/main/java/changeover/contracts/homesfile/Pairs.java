package changeover.contracts.homesfile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.StringJoiner;

/** {@code name=value; name=value}: a backslash keeps a semicolon or a backslash inside a value. */
final class Pairs {

    private Pairs() {}

    /** Empty when something is no pair, or a name stands twice. */
    static Optional<Map<String, String>> read(String cell) {
        var pairs = new LinkedHashMap<String, String>();
        for (String pair : split(cell)) {
            int at = pair.indexOf('=');
            if (at < 1
                    || pairs.put(
                                    pair.substring(0, at).strip(),
                                    pair.substring(at + 1).strip())
                            != null) {
                return Optional.empty();
            }
        }
        return Optional.of(pairs);
    }

    /** Cuts at every semicolon that no backslash keeps, and takes the backslashes off. */
    private static List<String> split(String cell) {
        var pairs = new ArrayList<String>();
        var pair = new StringBuilder();
        for (int i = 0; i < cell.length(); i++) {
            char c = cell.charAt(i);
            if (c == '\\' && i + 1 < cell.length()) {
                pair.append(cell.charAt(++i));
            } else if (c == ';') {
                pairs.add(pair.toString());
                pair.setLength(0);
            } else {
                pair.append(c);
            }
        }
        pairs.add(pair.toString());
        return pairs.stream().map(String::strip).filter(one -> !one.isEmpty()).toList();
    }

    static String write(Map<String, String> pairs) {
        var cell = new StringJoiner("; ");
        pairs.forEach((name, value) -> cell.add(name + "=" + kept(value)));
        return cell.toString();
    }

    private static String kept(String value) {
        return value.replace("\\", "\\\\").replace(";", "\\;");
    }
}
