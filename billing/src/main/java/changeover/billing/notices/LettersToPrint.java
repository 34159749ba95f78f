package changeover.billing.notices;

import changeover.billing.documents.Document;
import changeover.billing.documents.LetterBatchPdf;
import changeover.billing.documents.Letterhead;
import changeover.billing.documents.Letterheads;
import changeover.billing.documents.Words;
import changeover.contracts.tenants.Locales;
import changeover.contracts.tenants.Today;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** The letters for those without a mail address, as one file for the printer. */
@ApplicationScoped
public class LettersToPrint {

    @Inject
    Outbox outbox;

    @Inject
    MailTurns turns;

    @Inject
    LastLook look;

    @Inject
    Letterheads letterheads;

    @Inject
    Today today;

    /**
     * What is in the printer.
     *
     * @param messages to be marked {@link Outbox#printed} by whoever printed them
     */
    public record Batch(byte[] pdf, List<UUID> messages) {
        public Batch {
            messages = List.copyOf(messages);
        }
    }

    /** Every letter whose papers are made, that is still true and that nobody has printed; empty when there is none. */
    public Optional<Batch> batch() {
        List<LetterBatchPdf.Letter> letters = new ArrayList<>();
        List<UUID> ids = new ArrayList<>();
        LocalDate day = today.day();
        for (OutboxMessage message : outbox.toPrint()) {
            if (message.missing() == 0 && look.mayLeave(message.id())) {
                letters.add(letter(message, day));
                ids.add(message.id());
            }
        }
        return letters.isEmpty() ? Optional.empty() : Optional.of(new Batch(LetterBatchPdf.bytes(letters), ids));
    }

    /** One message as a letter, printed already or not. */
    public byte[] one(OutboxMessage message) {
        return LetterBatchPdf.bytes(List.of(letter(message, today.day())));
    }

    private LetterBatchPdf.Letter letter(OutboxMessage message, LocalDate day) {
        Words words = Words.in(Locales.of(message.language()));
        Letterhead from = letterheads.current(words);
        List<String> to = new ArrayList<>();
        to.add(message.toName());
        message.toPostal().lines().forEach(to::add);
        try {
            List<byte[]> papers =
                    turns.papers(message.id()).stream().map(Document::bytes).toList();
            return new LetterBatchPdf.Letter(
                    words.language(), from, day, to, message.subject(), message.body(), papers);
        } catch (SQLException cause) {
            throw new IllegalStateException(cause);
        }
    }
}
