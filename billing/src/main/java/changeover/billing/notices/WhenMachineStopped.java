package changeover.billing.notices;

import changeover.billing.documents.DayInPaper;
import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.catalogue.Sentence;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Locales;
import changeover.scheduling.stopped.MachineStop;
import changeover.scheduling.stopped.MachinesStopped;
import changeover.scheduling.stopped.StopEnd;
import changeover.scheduling.stopped.StopEnded;
import changeover.scheduling.stopped.StopLists;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * A home is told at once what must not be used there, whatever else waits, and again when it is back: whoever lives there, signs
 * or gets its reports, each in their language. Of what serves a building every home of it is told.
 */
@ApplicationScoped
class WhenMachineStopped {

    @Inject
    StopLists stops;

    @Inject
    Recipients recipients;

    @Inject
    Outbox outbox;

    @Inject
    OwnCatalogue catalogue;

    @Inject
    Businesses businesses;

    void tell(@Observes MachinesStopped stopped) {
        Catalogue trade = catalogue.catalogue();
        List<NewMessage> messages = new ArrayList<>();
        for (MachineStop stop : stops.all(stopped.stops())) {
            for (Recipient reader : recipients.ofDanger(stop.homeId(), stop.equipmentId(), stop.day())) {
                Map<String, Object> facts = facts(stop, stop.day(), reader);
                facts.put("seen", seen(stop, trade, reader.language()));
                facts.put("shut", Optional.ofNullable(stop.shutOff()).orElse(say(reader, "stopped.nothing")));
                messages.add(message("stopped", "stopped", stop, reader, facts));
            }
        }
        outbox.write(messages);
    }

    void tell(@Observes StopEnded ended) {
        List<NewMessage> messages = new ArrayList<>();
        for (MachineStop stop : stops.all(List.of(ended.stop()))) {
            MachineStop.Back back = Objects.requireNonNull(stop.back());
            for (Recipient reader : recipients.ofDanger(stop.homeId(), stop.equipmentId(), back.day())) {
                Map<String, Object> facts = facts(stop, back.day(), reader);
                facts.put("done", back.done());
                facts.put("name", back.who());
                messages.add(message(
                        "stop-ended",
                        ended.how() == StopEnd.IN_SERVICE ? "stop-ended" : "stop-taken",
                        stop,
                        reader,
                        facts));
            }
        }
        outbox.write(messages);
    }

    private static Map<String, Object> facts(MachineStop stop, LocalDate day, Recipient reader) {
        Map<String, Object> facts = new HashMap<>();
        facts.put("machine", Optional.ofNullable(stop.machine()).orElse(say(reader, "stopped.thing")));
        facts.put("home", stop.home());
        facts.put("day", DayInPaper.of(day, Locales.of(reader.language())));
        return facts;
    }

    /** Our own sentence in the reader's language; free words as they were written. */
    private static String seen(MachineStop stop, Catalogue trade, String language) {
        return Optional.ofNullable(stop.sentence())
                .flatMap(trade::findSentence)
                .map(Sentence::wording)
                .map(wording -> wording.in(language))
                .or(() -> Optional.ofNullable(stop.seen()))
                .orElse("");
    }

    private static String say(Recipient reader, String key) {
        return MailWords.say(reader.language(), key, Map.of());
    }

    private NewMessage message(String kind, String key, MachineStop stop, Recipient reader, Map<String, Object> facts) {
        LetterText text = LetterText.of(
                reader.language(),
                key,
                reader.name(),
                businesses.current().name(),
                businesses.profile().facts().phone(),
                facts);
        return new NewMessage(kind, stop.id(), 1, stop.homeId(), reader, text.subject(), text.body(), List.of());
    }
}
