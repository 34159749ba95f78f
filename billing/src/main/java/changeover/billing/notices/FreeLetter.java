package changeover.billing.notices;

import changeover.billing.documents.Wanted;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** A message in the business's own words: greeted by name, closed by the business, to one customer. */
public record FreeLetter(String kind, UUID aboutId, String subject, String body) {

    /** @param business its name, then its telephone where it has one */
    NewMessage to(Recipient reader, List<String> business, List<Wanted> papers) {
        String language = reader.language();
        String greeting = MailWords.say(language, "greeting", Map.of("name", OneLine.of(reader.name())));
        String closing = MailWords.say(language, "closing", Map.of("business", OneLine.of(business.getFirst())));
        String reach = business.size() > 1 ? "\n" + OneLine.of(business.get(1)) : "";
        return new NewMessage(
                kind,
                aboutId,
                1,
                null,
                reader,
                OneLine.of(subject),
                greeting + "\n\n" + body.strip() + "\n\n" + closing + reach + "\n",
                papers);
    }
}
