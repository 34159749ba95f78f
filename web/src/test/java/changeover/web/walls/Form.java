package changeover.web.walls;

import changeover.web.walls.Caller.Sent;
import java.net.URI;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A form as it stands on a page: where it goes, and its fields as a browser would send them.
 *
 * @param page where it was found
 */
record Form(String page, String method, String action, boolean hasFile, List<Field> fields) {

    /**
     * @param type as HTML says it; {@code select} and {@code textarea} for those
     * @param options what may be chosen; empty where anything may be typed
     * @param values what a browser would send
     */
    record Field(String name, String type, String mode, List<String> options, List<String> values) {

        boolean isTyped() {
            return options.isEmpty() && !type.equals("hidden") && !type.equals("file") && !type.equals("submit");
        }

        /** A plain text, which a person would be sorry to lose. */
        boolean isWords() {
            return isTyped() && (type.equals("text") || type.equals("textarea")) && mode.isEmpty();
        }
    }

    /** What every form carries, whatever it is about. */
    private static final Set<String> SAID_BY_EVERY_PAGE = Set.of("csrf", "writer", "once");

    private static final Pattern FORM = Pattern.compile("(?s)<form\\b([^>]*)>(.*?)</form>");
    private static final Pattern PART = Pattern.compile(
            "(?s)<(input|button)\\b([^>]*)>|<select\\b([^>]*)>(.*?)</select>|<textarea\\b([^>]*)>(.*?)</textarea>");
    private static final Pattern OPTION = Pattern.compile("<option\\b([^>]*)>");

    static List<Form> of(String path, String html) {
        var forms = new ArrayList<Form>();
        Matcher found = FORM.matcher(html);
        while (found.find()) {
            String action = attribute(found.group(1), "action");
            forms.add(new Form(
                    path,
                    attribute(found.group(1), "method").equalsIgnoreCase("post") ? "POST" : "GET",
                    action.isEmpty()
                            ? path
                            : URI.create(path)
                                    .resolve(action.replaceFirst("#.*", ""))
                                    .toString(),
                    attribute(found.group(1), "enctype").startsWith("multipart"),
                    fields(found.group(2))));
        }
        return forms;
    }

    private static List<Field> fields(String html) {
        var all = new LinkedHashMap<String, Field>();
        Matcher part = PART.matcher(html);
        while (part.find()) {
            Field field = part.group(1) != null
                    ? input(part.group(2))
                    : part.group(3) != null
                            ? select(part.group(3), part.group(4))
                            : new Field(
                                    attribute(part.group(5), "name"),
                                    "textarea",
                                    "",
                                    List.of(),
                                    List.of(plain(part.group(6).strip())));
            if (!field.name().isEmpty() && !SAID_BY_EVERY_PAGE.contains(field.name())) {
                all.merge(field.name(), field, Form::both);
            }
        }
        return List.copyOf(all.values());
    }

    private static Field input(String attributes) {
        String type = attribute(attributes, "type").isEmpty() ? "text" : attribute(attributes, "type");
        String value = attribute(attributes, "value");
        boolean box = type.equals("radio") || type.equals("checkbox");
        boolean on = Pattern.compile("\\schecked(\\s|$|=|/)")
                .matcher(attributes + " ")
                .find();
        boolean sent = box ? on : !type.equals("submit") && !type.equals("file");
        return new Field(
                attribute(attributes, "name"),
                type,
                attribute(attributes, "inputmode"),
                box ? List.of(value) : List.of(),
                sent ? List.of(value) : List.of());
    }

    private static Field select(String attributes, String inside) {
        var options = new ArrayList<String>();
        var chosen = new ArrayList<String>();
        Matcher option = OPTION.matcher(inside);
        while (option.find()) {
            options.add(attribute(option.group(1), "value"));
            if (option.group(1).contains(" selected")) {
                chosen.add(options.getLast());
            }
        }
        List<String> first = options.isEmpty() ? List.of() : List.of(options.getFirst());
        return new Field(attribute(attributes, "name"), "select", "", options, chosen.isEmpty() ? first : chosen);
    }

    /** Several inputs of one name: choices, or several values. */
    private static Field both(Field one, Field other) {
        var options = new ArrayList<>(one.options());
        options.addAll(other.options());
        var values = new ArrayList<>(one.values());
        values.addAll(other.values());
        return new Field(one.name(), one.type(), one.mode(), options, values);
    }

    private static String attribute(String attributes, String name) {
        Matcher found = Pattern.compile("\\b" + name + "\\s*=\\s*\"([^\"]*)\"").matcher(attributes);
        return found.find() ? plain(found.group(1)) : "";
    }

    /** What an escaped text says. */
    static String plain(String html) {
        return html.replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&quot;", "\"")
                .replace("&#39;", "'")
                .replace("&amp;", "&");
    }

    /** The form with one field's value put in. */
    Sent with(Map<String, List<String>> filled, String field, String value) {
        var all = new LinkedHashMap<>(filled);
        all.put(field, List.of(value));
        return hasFile ? multipart(all) : Sent.form(all);
    }

    private Sent multipart(Map<String, List<String>> all) {
        var text = new StringBuilder(part("csrf", Caller.TOKEN));
        for (Field field : fields) {
            for (String value : all.getOrDefault(field.name(), List.of())) {
                text.append(
                        field.type().equals("file")
                                ? part(field.name() + "\"; filename=\"homes.csv", value)
                                : part(field.name(), value));
            }
        }
        return new Sent("multipart/form-data; boundary=walls", text + "--walls--\r\n");
    }

    private static String part(String name, String value) {
        return "--walls\r\nContent-Disposition: form-data; name=\"" + name + "\"\r\n\r\n" + value + "\r\n";
    }

    /** Its kind: the same form of another row is the same. */
    String shape() {
        return method + " " + Walk.shape(action) + " "
                + fields.stream().map(Field::name).sorted().collect(Collectors.joining(","));
    }
}
