package changeover.web.office;

import changeover.billing.documents.Beware;
import changeover.scheduling.stopped.MachineStop;
import changeover.scheduling.stopped.StopLists;
import changeover.web.session.Bundles;
import changeover.web.session.Frame;
import changeover.web.session.ShutInWords;
import changeover.web.session.StopInWords;
import changeover.web.session.StoppedWords;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Collectors;

/** What must not be used in the homes of a day, and which of them stand without heat or water, for their papers. */
@ApplicationScoped
class HomesToBewareOf {

    @Inject
    StopLists stops;

    @Inject
    StopInWords words;

    @Inject
    ShutInWords shut;

    Map<UUID, Beware> of(Collection<UUID> homes, LocalDate day, Frame frame) {
        Map<UUID, List<MachineStop>> stopped = stops.openIn(homes);
        Map<UUID, String> closed = shut.on(homes, day, frame.locale());
        Map<UUID, Beware> all = new HashMap<>();
        for (UUID home : homes) {
            List<MachineStop> open = stopped.getOrDefault(home, List.of());
            String sentence = closed.getOrDefault(home, "");
            if (!open.isEmpty() || !sentence.isEmpty()) {
                all.put(
                        home,
                        new Beware(
                                words.of(open, frame).stream()
                                        .map(one -> line(one, frame))
                                        .toList(),
                                open.stream()
                                        .map(MachineStop::findingId)
                                        .filter(Objects::nonNull)
                                        .collect(Collectors.toSet()),
                                sentence));
            }
        }
        return all;
    }

    private static String line(StopInWords.View stop, Frame frame) {
        StoppedWords say = Bundles.of(StoppedWords.class, frame.locale());
        String seen = stop.machine().isEmpty() ? stop.seen() : stop.machine() + ". " + stop.seen();
        String shutOff = stop.shutOff().isEmpty() ? "" : " " + say.was_shut_off(stop.shutOff());
        return seen + " (" + say.since(stop.day()) + ")." + shutOff;
    }
}
