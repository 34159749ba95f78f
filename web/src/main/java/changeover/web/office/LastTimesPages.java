package changeover.web.office;

import changeover.contracts.calendar.DayInWords;
import changeover.contracts.catalogue.Cadence;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.customers.AllEquipment;
import changeover.contracts.customers.Equipment;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.contracts.takeover.TakeOver;
import changeover.contracts.words.Refusal;
import changeover.scheduling.visits.LastTimes;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Said;
import changeover.web.session.SaidOnce;
import changeover.web.session.Tab;
import changeover.web.session.Typed;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** When each task was last done on each machine of a home, by hand: a day, or that it is read at the first visit. */
@Path("/{slug}/homes/{home}/last-times")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class LastTimesPages {

    /** A task of a machine, with the names of its two fields. */
    public record Line(String task, String often, String dayField, String readField) {}

    public record Machine(String name, String kind, List<Line> lines) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance lasttimes(
                Frame frame, UUID home, String street, String before, List<Machine> machines, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Homes homes;

    @Inject
    AllEquipment equipment;

    @Inject
    OwnCatalogue trade;

    @Inject
    HowOften howOften;

    @Inject
    LastTimes times;

    @Inject
    TakeOver takeOver;

    @GET
    @Transactional
    public TemplateInstance page(@PathParam("home") UUID home) {
        Map<String, String> filled = new HashMap<>();
        times.known(List.of(home)).forEach((of, known) -> {
            LocalDate day = known.day();
            if (day != null) {
                filled.put(dayField(of), day.toString());
            } else if (known.unread()) {
                filled.put(readField(of), "yes");
            }
        });
        return page(home, Said.filled(filled));
    }

    @POST
    public Response keep(
            @PathParam("slug") String slug, @PathParam("home") UUID home, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    found(home);
                    List<LastTimes.Told> told = told(home, typed);
                    typed.understood();
                    times.tell(told);
                    return SaidOnce.at("/" + slug + "/homes/" + home + "/last-times", "kept");
                },
                refusals -> page(home, Said.again(typed, refusals, frames.locale())));
    }

    /** What differs from what is known; an empty field says nothing. */
    private List<LastTimes.Told> told(UUID home, Typed typed) {
        OwnCatalogue.Own own = trade.read();
        Map<LastTimes.Of, LastTimes.Known> known = times.known(List.of(home));
        LocalDate last = takeOver.dayOrToday();
        List<LastTimes.Told> told = new ArrayList<>();
        for (Equipment machine : equipment.ofHome(home)) {
            for (HowOften.Line line : counted(machine, own)) {
                var of = new LastTimes.Of(machine.id(), line.code());
                LastTimes.Known before = known.getOrDefault(of, LastTimes.Known.NOTHING);
                LocalDate day = typed.dayOrNone(dayField(of));
                if (day != null && !day.equals(before.day())) {
                    notAfter(last, day, of, typed);
                    told.add(new LastTimes.Told(home, machine.id(), line.code(), day));
                } else if (day == null && typed.ticked(readField(of)) && !before.unread()) {
                    told.add(new LastTimes.Told(home, machine.id(), line.code(), null));
                }
            }
        }
        return told;
    }

    /** What is only done on request is never counted from a last time. */
    private List<HowOften.Line> counted(Equipment machine, OwnCatalogue.Own own) {
        return howOften.of(machine, own, frames.locale()).stream()
                .filter(line -> !(own.catalogue().task(line.code()).cadence() instanceof Cadence.OnRequest))
                .toList();
    }

    private static void notAfter(LocalDate last, LocalDate day, LastTimes.Of of, Typed typed) {
        if (day.isAfter(last)) {
            typed.refuse(Refusal.of("brought.after-take-over", Map.of("day", DayInWords.of(last)))
                    .at(dayField(of)));
        }
    }

    private TemplateInstance page(UUID home, Said form) {
        Frame frame = frames.of(Tab.HOMES);
        OwnCatalogue.Own own = trade.read();
        return Pages.lasttimes(
                frame,
                home,
                found(home).line(),
                frame.inWords(takeOver.dayOrToday()),
                equipment.ofHome(home).stream()
                        .map(machine -> new Machine(
                                machine.name(),
                                own.catalogue()
                                        .findKind(machine.kind())
                                        .map(kind -> kind.wording().in(frame.locale()))
                                        .orElse(machine.kind()),
                                counted(machine, own).stream()
                                        .map(line -> line(new LastTimes.Of(machine.id(), line.code()), line))
                                        .toList()))
                        .toList(),
                form);
    }

    private static Line line(LastTimes.Of of, HowOften.Line line) {
        return new Line(line.task(), line.often(), dayField(of), readField(of));
    }

    private static String dayField(LastTimes.Of of) {
        return "day-" + of.unit() + "-" + of.task();
    }

    private static String readField(LastTimes.Of of) {
        return "read-" + of.unit() + "-" + of.task();
    }

    private Home found(UUID id) {
        return homes.get(id).orElseThrow(NotFoundException::new);
    }
}
