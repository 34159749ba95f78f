package changeover.billing.notices;

import changeover.billing.documents.DayInPaper;
import changeover.billing.documents.Wanted;
import changeover.contracts.tenants.Locales;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A message in the business's own words: greeted by name, closed by the business, to one customer. */
public record FreeLetter(String kind, UUID aboutId, String subject, String body) {

    /** A paper of the business goes to a customer. @param expiresOn its last day; null where it has none */
    public static FreeLetter ofPaper(String language, UUID aboutId, String paper, @Nullable LocalDate expiresOn) {
        String name = OneLine.of(paper);
        String until = expiresOn == null
                ? ""
                : MailWords.say(language, "paper.until", Map.of("day", DayInPaper.of(expiresOn, Locales.of(language))));
        return new FreeLetter(
                "paper",
                aboutId,
                MailWords.say(language, "paper.subject", Map.of("paper", name)),
                MailWords.say(language, "paper.body", Map.of("paper", name, "until", until)));
    }

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
