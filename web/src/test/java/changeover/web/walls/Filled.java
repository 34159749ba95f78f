package changeover.web.walls;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A form as a person would have filled it: what stands in it stays, what is empty gets something. */
final class Filled {

    private Filled() {}

    static Map<String, List<String>> of(Form form) {
        var all = new LinkedHashMap<String, List<String>>();
        for (Form.Field field : form.fields()) {
            all.put(field.name(), field.values().stream().allMatch(String::isBlank) ? typed(field) : field.values());
        }
        return all;
    }

    private static List<String> typed(Form.Field field) {
        if (!field.options().isEmpty()) {
            return field.type().equals("checkbox")
                    ? List.of()
                    : List.of(field.options().getLast());
        }
        return List.of(
                switch (field.type() + field.mode()) {
                    case "date" -> LocalDate.now().plusDays(3).toString();
                    case "time" -> "09:30";
                    case "email" -> "walls@example.com";
                    case "hidden", "submit", "file" ->
                        field.values().isEmpty() ? "" : field.values().getFirst();
                    case "text", "textarea" -> "Words " + field.name().hashCode();
                    default -> "3";
                });
    }
}
