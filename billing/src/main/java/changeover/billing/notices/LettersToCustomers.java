package changeover.billing.notices;

import changeover.billing.documents.Wanted;
import changeover.contracts.tenants.Businesses;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Letters to many customers at once, each in their own language, by mail or for the printer. */
@ApplicationScoped
public class LettersToCustomers {

    @Inject
    Recipients recipients;

    @Inject
    Outbox outbox;

    @Inject
    Businesses businesses;

    /** Whom a letter goes to, and the papers that go with it. */
    public record Addressed(UUID customerId, List<Wanted> papers) {
        public Addressed {
            papers = List.copyOf(papers);
        }
    }

    /** Whether each customer gets mail; those that are not known are missing. */
    public Map<UUID, Recipient> readers(Collection<UUID> customers) {
        return recipients.of(customers);
    }

    /** @param words the letter in the language of whoever reads it, {@code en} or {@code fr} */
    public void write(Map<Addressed, Function<String, FreeLetter>> words) {
        Map<UUID, Recipient> readers =
                recipients.of(words.keySet().stream().map(Addressed::customerId).toList());
        String name = businesses.current().name();
        @Nullable String phone = businesses.profile().facts().phone();
        List<String> business = Stream.of(name, phone == null ? "" : phone.strip())
                .filter(line -> !line.isEmpty())
                .toList();
        List<NewMessage> messages = new ArrayList<>();
        words.forEach((addressed, letter) -> {
            Recipient reader = readers.get(addressed.customerId());
            if (reader != null) {
                messages.add(letter.apply(reader.language()).to(reader, business, addressed.papers()));
            }
        });
        outbox.write(messages);
    }
}
