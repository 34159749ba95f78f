package changeover.web.office;

import changeover.billing.documents.band.YearTable;
import changeover.billing.payments.InvoiceFilter;
import changeover.billing.payments.InvoiceLists;
import changeover.billing.payments.InvoiceRow;
import changeover.contracts.calendar.Window;
import changeover.contracts.customers.AccessCodes;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.contracts.merging.HomeMerges;
import changeover.contracts.tenants.Today;
import changeover.scheduling.households.SlotRhythm;
import changeover.scheduling.households.SlotRhythms;
import changeover.scheduling.stopped.StopLists;
import changeover.scheduling.visits.HouseholdTasks;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Said;
import changeover.web.session.SaidOnce;
import changeover.web.session.StopInWords;
import changeover.web.session.Tab;
import changeover.web.session.Typed;
import changeover.web.session.YearBand;
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
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;

/** The house card: the whole home on one page, its keys and codes only when asked for with a reason. */
@Path("/{slug}/homes")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class HouseCardPages {

    /** How many calls a card shows, the newest. */
    private static final int CALLS = 10;

    /** @param sentence what was seen of the home's filters there, and when to look and change by it */
    public record Slot(UUID id, String name, String size, String sentence) {

        static Slot of(SlotRhythm rhythm, Locale locale) {
            return new Slot(
                    rhythm.slot().id(),
                    rhythm.slot().name(),
                    rhythm.slot().size(),
                    rhythm.learned().sentence().in(locale));
        }
    }

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance card(
                Frame frame,
                HouseCard card,
                Map<UUID, HoursInWords.Hour> hours,
                String band,
                YearTable table,
                List<InvoiceRow> invoices,
                List<CallRows.Line> calls,
                List<EstimateRowsInWords.Line> estimates,
                List<OrderRows.Line> orders,
                List<StopInWords.View> stops,
                Said form,
                HouseholdList own,
                List<Slot> slots,
                List<HomeMerges.Merge> merges,
                Said doing);

        static native TemplateInstance codes(Frame frame, Home home, List<AccessCodes.Shown> codes);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    HouseCards cards;

    @Inject
    HoursInWords hours;

    @Inject
    Homes homes;

    @Inject
    AccessCodes codes;

    @Inject
    InvoiceLists invoices;

    @Inject
    CallRows calls;

    @Inject
    EstimateRowsInWords estimates;

    @Inject
    OrderRows orders;

    @Inject
    StopLists stops;

    @Inject
    StopInWords stopWords;

    @Inject
    HouseholdTasks household;

    @Inject
    SlotRhythms rhythms;

    @Inject
    HomeMerges merges;

    @Inject
    Today today;

    @GET
    @Path("{home}")
    @Transactional
    public TemplateInstance card(@PathParam("home") UUID home) {
        return page(home, Said.blank());
    }

    /** Shown in the answer to the post itself, kept in no cache, and never again without another reason. */
    @POST
    @Path("{home}/codes/reading")
    public Response read(@PathParam("home") UUID home, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        String reason = typed.text("reason", 200);
        return desk.look(
                () -> {
                    Home known = homes.get(home).orElseThrow(NotFoundException::new);
                    typed.understood();
                    return Pages.codes(frames.of(Tab.HOMES), known, codes.read(home, reason));
                },
                refusals -> page(home, Said.again(typed, refusals, frames.locale())));
    }

    /** The home's machines are all entered: what was sold unseen is promised from today on. */
    @POST
    @Path("{home}/reading")
    public Response equipmentRead(
            @PathParam("slug") String slug, @PathParam("home") UUID home, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    Home known = homes.get(home).orElseThrow(NotFoundException::new);
                    homes.equipmentRead(known.id(), today.day());
                    return SaidOnce.at("/" + slug + "/homes/" + home, "home-read");
                },
                refusals -> page(home, Said.again(typed, refusals, frames.locale())));
    }

    /** The card with the form for its codes; inside a transaction. */
    TemplateInstance page(UUID home, Said form) {
        return page(home, form, Said.filled(Map.of("day", today.day().toString())));
    }

    /** The card with both its forms: for the codes, and for what the household did. */
    TemplateInstance page(UUID home, Said form, Said doing) {
        Frame frame = frames.of(Tab.HOMES);
        HouseCard card = cards.of(home, frame.locale()).orElseThrow(NotFoundException::new);
        Window year = new Window(card.year().begins(), card.year().begins().plusMonths(12));
        return Pages.card(
                frame,
                card,
                hours.of(
                        Stream.concat(card.coming().stream(), card.past().stream())
                                .map(HouseCard.Trip::id)
                                .toList(),
                        frame),
                card.promised() ? YearBand.svg(card.year(), frame.locale()) : "",
                YearTable.of(card.year(), frame.locale()),
                invoices.rows(InvoiceFilter.ofHome(home), today.day()),
                calls.ofHome(frame, home, CALLS),
                estimates.ofHome(frame, home),
                orders.ofHome(frame, home),
                stopWords.of(stops.ofHome(home), frame),
                form,
                HouseholdList.of(household.ofHome(home, year), frame),
                rhythms.ofHome(home).stream()
                        .map(one -> Slot.of(one, frame.locale()))
                        .toList(),
                merges.of(home),
                doing);
    }
}
