package changeover.billing.notices;

import changeover.billing.documents.LetterBatchPdf;
import changeover.billing.documents.Letterhead;
import changeover.billing.documents.Letterheads;
import changeover.billing.documents.Words;
import changeover.contracts.tenants.Locales;
import changeover.contracts.tenants.Today;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
        List<OutboxMessage> leaving = outbox.toPrint().stream()
                .filter(message -> message.missing() == 0 && look.mayLeave(message.id()))
                .toList();
        return leaving.isEmpty()
                ? Optional.empty()
                : Optional.of(new Batch(
                        printed(leaving),
                        leaving.stream().map(OutboxMessage::id).toList()));
    }

    /** One message as a letter, printed already or not. */
    public byte[] one(OutboxMessage message) {
        return printed(List.of(message));
    }

    /** The papers are read together, the letterhead once for each language. */
    private byte[] printed(List<OutboxMessage> messages) {
        LocalDate day = today.day();
        Map<UUID, List<byte[]>> papers =
                turns.papers(messages.stream().map(OutboxMessage::id).toList());
        Map<Words, Letterhead> heads = new HashMap<>();
        return LetterBatchPdf.bytes(messages.stream()
                .map(message -> {
                    Words words = Words.in(Locales.of(message.language()));
                    return letter(
                            message,
                            words,
                            heads.computeIfAbsent(words, letterheads::current),
                            day,
                            papers.getOrDefault(message.id(), List.of()));
                })
                .toList());
    }

    private static LetterBatchPdf.Letter letter(
            OutboxMessage message, Words words, Letterhead from, LocalDate day, List<byte[]> papers) {
        List<String> to = new ArrayList<>();
        to.add(message.toName());
        message.toPostal().lines().forEach(to::add);
        return new LetterBatchPdf.Letter(words.language(), from, day, to, message.subject(), message.body(), papers);
    }
}
