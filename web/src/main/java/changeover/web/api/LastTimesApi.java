package changeover.web.api;

import changeover.contracts.calendar.DayInWords;
import changeover.contracts.catalogue.Cadence;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.customers.AllEquipment;
import changeover.contracts.customers.Equipment;
import changeover.contracts.customers.Homes;
import changeover.contracts.takeover.TakeOver;
import changeover.contracts.words.Refusal;
import changeover.scheduling.visits.LastTimes;
import changeover.web.session.Once;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** When each task was last done on each machine of a home, and what is to be read there at the first visit. */
@Path("/api/v1/{slug}/homes/{id}/last-times")
@RolesAllowed({"owner", "office"})
public class LastTimesApi {

    /** @param day null where nobody knows it */
    public record LastTime(
            UUID unit, String name, String task, @Nullable LocalDate day, boolean toBeRead) {}

    @Inject
    Homes homes;

    @Inject
    AllEquipment equipment;

    @Inject
    OwnCatalogue trade;

    @Inject
    LastTimes times;

    @Inject
    TakeOver takeOver;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    @GET
    @Transactional
    public List<LastTime> all(@PathParam("id") UUID id) {
        return list(found(id));
    }

    /** {@code times}: of each {@code unit, task} the {@code day}; without a day it is to be read at the first visit. */
    @POST
    public Response tell(@PathParam("id") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "homes/" + id + "/last-times " + body, () -> {
            found(id);
            Asked asked = Asked.of(body, json);
            Set<LastTimes.Of> known = new HashSet<>();
            list(id).forEach(one -> known.add(new LastTimes.Of(one.unit(), one.task())));
            LocalDate latest = takeOver.dayOrToday();
            List<LastTimes.Told> told = new ArrayList<>();
            Set<LastTimes.Of> said = new HashSet<>();
            for (Asked one : asked.each("times")) {
                var of = new LastTimes.Of(one.id("unit"), one.text("task", 100));
                LocalDate day = one.dayOrNone("day");
                one.nothingElse();
                if (!known.contains(of)) {
                    one.refuse(Refusal.of("brought.task-unknown", Map.of("said", of.task()))
                            .at(one.path() + "task"));
                } else if (!said.add(of)) {
                    one.refuse(Refusal.of("brought.told-twice").at(one.path() + "task"));
                } else if (day != null && day.isAfter(latest)) {
                    one.refuse(Refusal.of("brought.after-take-over", Map.of("day", DayInWords.of(latest)))
                            .at(one.path() + "day"));
                }
                told.add(new LastTimes.Told(id, of.unit(), of.task(), day));
            }
            asked.nothingElse().understood();
            times.tell(told);
            return Once.Answer.done(list(id));
        });
    }

    private List<LastTime> list(UUID home) {
        OwnCatalogue.Own own = trade.read();
        Map<LastTimes.Of, LastTimes.Known> known = times.known(List.of(home));
        List<LastTime> all = new ArrayList<>();
        for (Equipment machine : equipment.ofHome(home)) {
            own.catalogue().tasksFor(machine.kind(), machine.fits()).stream()
                    .filter(task -> !(task.cadence() instanceof Cadence.OnRequest))
                    .forEach(task -> {
                        LastTimes.Known one = known.getOrDefault(
                                new LastTimes.Of(machine.id(), task.code()), LastTimes.Known.NOTHING);
                        all.add(new LastTime(machine.id(), machine.name(), task.code(), one.day(), one.unread()));
                    });
        }
        return all;
    }

    private UUID found(UUID id) {
        return homes.get(id).orElseThrow(NotFoundException::new).id();
    }
}
