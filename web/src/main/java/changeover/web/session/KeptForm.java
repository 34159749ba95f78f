package changeover.web.session;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

/** A form as its writer left it: where it was going, and its fields in order. */
record KeptForm(String action, List<Field> fields) {

    record Field(String name, String value) {}

    /** The token of the page it was written on; it has served when the form comes back. */
    static final String CSRF = "csrf";

    /** Who had the page open, as the page itself says. */
    static final String WRITER = "writer";

    /** @param body as {@code application/x-www-form-urlencoded} */
    static KeptForm of(String action, String body) {
        var fields = new ArrayList<Field>();
        for (String pair : body.split("&")) {
            int at = pair.indexOf('=');
            if (at > 0) {
                fields.add(new Field(decoded(pair.substring(0, at)), decoded(pair.substring(at + 1))));
            }
        }
        return new KeptForm(action, fields);
    }

    /** The token that came with the form, or an empty text. */
    String token() {
        return first(CSRF);
    }

    /** Whether it may be given to this person: its writer, or anybody here where the page did not say who wrote. */
    boolean isFor(UUID person) {
        String writer = first(WRITER);
        return writer.isEmpty() || writer.equals(person.toString());
    }

    private String first(String name) {
        return fields.stream()
                .filter(field -> field.name().equals(name))
                .map(Field::value)
                .findFirst()
                .orElse("");
    }

    /** What the person wrote: neither the token nor the page's own mark. */
    List<Field> withoutToken() {
        return fields.stream()
                .filter(field -> !field.name().equals(CSRF) && !field.name().equals(WRITER))
                .toList();
    }

    private static String decoded(String text) {
        try {
            return URLDecoder.decode(text, StandardCharsets.UTF_8);
        } catch (IllegalArgumentException notEncoded) {
            return text;
        }
    }
}
