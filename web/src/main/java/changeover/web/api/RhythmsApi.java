package changeover.web.api;

import changeover.contracts.catalogue.Cadence;
import changeover.contracts.catalogue.Interval;
import changeover.contracts.catalogue.OwnIntervals;
import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import changeover.scheduling.households.FilterLooks;
import changeover.scheduling.households.FilterSlot;
import changeover.scheduling.households.FilterSlots;
import changeover.scheduling.households.HouseholdRounds;
import changeover.scheduling.households.SlotRhythms;
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
import java.util.List;
import java.util.Set;
import java.util.UUID;

/** How long filters last in a home: what was seen, what is recommended, what a person decided instead. */
@Path("/api/v1/{slug}/homes/{home}/rhythms")
@RolesAllowed({"owner", "office"})
public class RhythmsApi {

    private static final int LONGEST_DAYS = 1830;

    @Inject
    Homes homes;

    @Inject
    FilterSlots slots;

    @Inject
    FilterLooks looks;

    @Inject
    SlotRhythms rhythms;

    @Inject
    HouseholdRounds rounds;

    @Inject
    OwnIntervals intervals;

    @Inject
    Today today;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    /** One for each filter slot of the home. */
    @GET
    @Transactional
    public List<RhythmDocument> ofHome(@PathParam("home") UUID home) {
        var _ = homes.get(home).orElseThrow(NotFoundException::new);
        return rhythms.ofHome(home).stream().map(RhythmDocument::of).toList();
    }

    /**
     * Somebody looked at the filter or changed it: {@code by}, and {@code found} (clean, grey), {@code changed} or both;
     * optionally {@code day} (today), never ahead.
     */
    @POST
    @Path("{machine}/looks")
    public Response tell(
            @PathParam("home") UUID home,
            @PathParam("machine") UUID machine,
            @HeaderParam("Operation-Id") String operation,
            String body) {
        return once.answer(operation, "look " + home + machine + body, () -> {
            FilterSlot slot = slot(home, machine);
            Asked asked = Asked.of(body, json);
            FilterLooks.Telling told = told(asked, today.day());
            asked.nothingElse().understood();
            looks.tell(slot, told, null);
            return followed(slot);
        });
    }

    /**
     * A person decides for this slot: {@code lookAfterDays} (7 or more), {@code changeAfterDays}, {@code why} and {@code by};
     * or {@code end}, which gives it back to what was learned or sold.
     */
    @POST
    @Path("{machine}/word")
    public Response decide(
            @PathParam("home") UUID home,
            @PathParam("machine") UUID machine,
            @HeaderParam("Operation-Id") String operation,
            String body) {
        return once.answer(operation, "word " + home + machine + body, () -> {
            FilterSlot slot = slot(home, machine);
            Asked asked = Asked.of(body, json);
            if (asked.yes("end")) {
                asked.nothingElse().understood();
                intervals.forget(slot.taskCode(), slot.id());
                rounds.wordEnded(slot);
                return followed(slot);
            }
            int look = asked.whole("lookAfterDays", 7, LONGEST_DAYS);
            int change = asked.whole("changeAfterDays", 7, LONGEST_DAYS);
            String why = asked.text("why", 200);
            String by = asked.text("by", 120);
            if (change < look) {
                asked.refuse(Refusal.of("filter.change-before-look").at("changeAfterDays"));
            }
            asked.nothingElse().understood();
            intervals.keep(new Interval(
                    slot.taskCode(),
                    slot.id(),
                    new Cadence.LookThenChange(look, change),
                    why,
                    null,
                    new Interval.Decided(by, today.day())));
            return followed(slot);
        });
    }

    /** What a document says of a filter; {@code found}, {@code changed} or both. */
    static FilterLooks.Telling told(Asked asked, LocalDate today) {
        String found = asked.value("found") == null ? null : asked.oneOf("found", Set.of("clean", "grey"));
        boolean changed = asked.yes("changed");
        String by = asked.text("by", 120);
        LocalDate day = asked.value("day") == null ? today : asked.day("day");
        if (day.isAfter(today)) {
            asked.refuse(Refusal.of("household.ahead").at("day"));
        }
        return new FilterLooks.Telling(day, found, changed, by);
    }

    private Once.Answer followed(FilterSlot slot) {
        rounds.follow(List.of(slot));
        return Once.Answer.done(RhythmDocument.of(rhythms.of(slot.id()).orElseThrow(NotFoundException::new)));
    }

    private FilterSlot slot(UUID home, UUID machine) {
        return slots.find(machine).filter(slot -> slot.homeId().equals(home)).orElseThrow(NotFoundException::new);
    }
}
