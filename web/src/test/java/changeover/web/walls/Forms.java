package changeover.web.walls;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The forms of a page, read as a browser would send them. */
final class Forms {

    private static final Pattern FORM = Pattern.compile("(?s)<form[^>]*method=\"post\"[^>]*>.*?</form>");
    private static final Pattern ACTION = Pattern.compile("<form[^>]*action=\"([^\"]+)\"");
    private static final Pattern INPUT = Pattern.compile("<input([^>]*)>");
    private static final Pattern SELECT = Pattern.compile("(?s)<select[^>]*name=\"([^\"]+)\"[^>]*>(.*?)</select>");
    private static final Pattern TEXTAREA =
            Pattern.compile("(?s)<textarea[^>]*name=\"([^\"]+)\"[^>]*>(.*?)</textarea>");
    private static final Pattern OPTION = Pattern.compile("<option value=\"([^\"]*)\"");
    private static final Pattern NAME = Pattern.compile("name=\"([^\"]+)\"");
    private static final Pattern VALUE = Pattern.compile("value=\"([^\"]*)\"");

    private Forms() {}

    static List<String> on(String page) {
        return FORM.matcher(page).results().map(found -> found.group()).toList();
    }

    static String action(String form, String page) {
        Matcher action = ACTION.matcher(form);
        return action.find() ? action.group(1) : page;
    }

    /** Field by field with what stands in it; boxes that are not ticked and files are left out. */
    static Map<String, List<String>> fields(String form) {
        var fields = new LinkedHashMap<String, List<String>>();
        INPUT.matcher(form).results().map(found -> found.group(1)).forEach(input -> {
            Matcher name = NAME.matcher(input);
            Matcher value = VALUE.matcher(input);
            boolean off = input.contains("type=\"checkbox\"") || input.contains("type=\"file\"");
            if (name.find() && !off) {
                fields.putIfAbsent(name.group(1), List.of(value.find() ? value.group(1) : ""));
            }
        });
        TEXTAREA.matcher(form).results().forEach(area -> fields.put(area.group(1), List.of(area.group(2))));
        SELECT.matcher(form)
                .results()
                .forEach(select -> OPTION.matcher(select.group(2))
                        .results()
                        .map(option -> option.group(1))
                        .filter(value -> !value.isEmpty())
                        .reduce((_, last) -> last)
                        .ifPresent(value -> fields.put(select.group(1), List.of(value))));
        return fields;
    }
}
