package changeover.billing.notices;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A message's words: a greeting by name, what it is about, and who sends it. */
record LetterText(String subject, String body) {

    static LetterText of(
            String language, String key, String name, String business, @Nullable String phone, Map<String, ?> facts) {
        return of(language, key + ".subject", key + ".body", name, business, phone, facts);
    }

    static LetterText of(
            String language,
            String subjectKey,
            String bodyKey,
            String name,
            String business,
            @Nullable String phone,
            Map<String, ?> facts) {
        Map<String, Object> said = new HashMap<>(facts);
        said.replaceAll((fact, value) -> OneLine.of(String.valueOf(value)));
        String greeting = MailWords.say(language, "greeting", Map.of("name", OneLine.of(name)));
        String closing = MailWords.say(language, "closing", Map.of("business", OneLine.of(business)));
        String reach = phone == null || phone.isBlank() ? "" : "\n" + OneLine.of(phone);
        return new LetterText(
                OneLine.of(MailWords.say(language, subjectKey, said)),
                greeting + "\n\n" + MailWords.say(language, bodyKey, said) + "\n\n" + closing + reach + "\n");
    }
}
