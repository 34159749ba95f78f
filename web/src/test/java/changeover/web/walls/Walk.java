package changeover.web.walls;

import changeover.web.walls.Caller.Answer;
import changeover.web.walls.Caller.Who;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/** Goes from page to page along the links as a person would, a few pages of each kind, and gathers their forms. */
final class Walk {

    /** How many pages of one kind are looked at: a draft and an issued invoice are not alike. */
    private static final int OF_A_KIND = 3;

    private static final Pattern LINK = Pattern.compile("<a\\b[^>]*\\shref=\"([^\"#]+)");

    private final Who who;
    private final String slug;
    private final Deque<String> open = new ArrayDeque<>();
    private final Set<String> seen = new HashSet<>();
    private final Map<String, Integer> kinds = new HashMap<>();
    private final Map<String, Form> forms = new LinkedHashMap<>();
    private final Map<String, Integer> broken = new LinkedHashMap<>();

    private Walk(Who who, String slug) {
        this.who = who;
        this.slug = slug;
    }

    /** Every kind of form that the person comes by, and the pages that did not open. */
    record Walked(List<Form> forms, Map<String, Integer> broken, int pages) {}

    static Walked from(Who who, String slug, List<String> starts) {
        var walk = new Walk(who, slug);
        starts.forEach(walk::later);
        int pages = 0;
        while (!walk.open.isEmpty()) {
            walk.look(walk.open.poll());
            pages++;
        }
        return new Walked(List.copyOf(walk.forms.values()), Map.copyOf(walk.broken), pages);
    }

    private void look(String path) {
        Answer answer = Caller.get(who, path);
        if (answer.status() == 303) {
            later(answer.location().replaceFirst("^https?://[^/]*", ""));
            return;
        }
        if (answer.status() != 200) {
            broken.put(path, answer.status());
            return;
        }
        if (!answer.isPage()) {
            return;
        }
        for (Form form : Form.of(path, answer.body())) {
            forms.putIfAbsent(form.shape(), form);
            if (form.method().equals("GET")) {
                form.fields().stream()
                        .filter(Form.Field::isTyped)
                        .forEach(field -> later(form.action() + "?" + field.name() + "=a"));
            }
        }
        LINK.matcher(answer.body())
                .results()
                .map(link -> Form.plain(link.group(1)))
                .forEach(this::later);
    }

    private void later(String path) {
        boolean inside = path.startsWith("/" + slug + "/") || path.equals("/" + slug);
        if (inside && seen.add(path) && kinds.merge(shape(path), 1, Integer::sum) <= OF_A_KIND) {
            open.add(path);
        }
    }

    static String shape(String path) {
        return path.replaceAll("[0-9a-f]{8}-[0-9a-f-]{27}", "#")
                .replaceAll("\\d{4}-\\d{2}-\\d{2}", "#")
                .replaceAll("=[^&]*", "=")
                .replaceAll("/intervals/[^/]+", "/intervals/#");
    }
}
