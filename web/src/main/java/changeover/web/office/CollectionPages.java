package changeover.web.office;

import changeover.billing.collection.CollectedLately;
import changeover.billing.collection.Collecting;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.words.CsvTable;
import changeover.contracts.words.Refusal;
import changeover.web.session.CsvAnswer;
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
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What is to be collected from accounts up to a day, and what was collected lately. */
@Path("/{slug}/money/collection")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class CollectionPages {

    private static final int MOST_DEBITS = 10_000;

    public record Row(
            UUID id,
            String due,
            UUID customer,
            String name,
            String label,
            String mandate,
            @Nullable Integer number,
            @Nullable Integer of,
            boolean cameBack,
            boolean ticked,
            String amount,
            String drawn,
            int before) {}

    public record Done(UUID payment, UUID customer, String name, String day, String documents, String amount) {}

    public record View(String until, List<Row> rows, String sum, List<Done> lately, boolean more) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance collection(Frame frame, View view, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Collecting collecting;

    @Inject
    CollectedLately collectedLately;

    @Inject
    Businesses businesses;

    @GET
    @Transactional
    public TemplateInstance list(@QueryParam("until") @Nullable String until) {
        LocalDate today = frames.of(Tab.MONEY).today();
        return page(day(until, today), Said.filled(Map.of("day", today.toString())));
    }

    /** For whoever types it in at the bank: due day, customer, reference, document, amount. */
    @GET
    @Path("collection.csv")
    @Produces("text/csv")
    @Transactional
    public Response csv(@QueryParam("until") @Nullable String until) {
        LocalDate today = frames.of(Tab.MONEY).today();
        CsvTable table = new CsvTable("due", "customer", "reference", "document", "amount", "currency");
        collecting
                .until(day(until, today))
                .forEach(one -> table.row(
                        one.item().dueDay(),
                        one.item().customer(),
                        one.mandate(),
                        one.item().label(),
                        one.item().open().amount(),
                        one.item().open().currency().getCurrencyCode()));
        return CsvAnswer.of(table.bytes(), "collection");
    }

    @POST
    public Response mark(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        String until = fields.getFirst("until");
        return desk.answer(
                () -> {
                    LocalDate day = typed.day("day");
                    List<UUID> chosen = typed.each("invoice").stream()
                            .flatMap(CollectionPages::id)
                            .toList();
                    if (chosen.isEmpty()) {
                        throw Refusal.of("collection.none").thrown();
                    }
                    Map<UUID, Collecting.Drawn> drawn = new LinkedHashMap<>();
                    chosen.forEach(id -> drawn.put(id, drawn(typed, id)));
                    typed.understood();
                    collecting.collected(drawn, day);
                    return SaidOnce.at("/" + slug + "/money/collection", "collected");
                },
                refusals ->
                        page(day(until, frames.of(Tab.MONEY).today()), Said.again(typed, refusals, frames.locale())));
    }

    /** What the list said, since that is what the bank was told. */
    private Collecting.Drawn drawn(Typed typed, UUID id) {
        return new Collecting.Drawn(
                typed.money("drawn-" + id, businesses.current().currency()),
                typed.whole("before-" + id, 0, MOST_DEBITS));
    }

    private static Stream<UUID> id(String text) {
        try {
            return Stream.of(UUID.fromString(text));
        } catch (IllegalArgumentException notAnId) {
            return Stream.empty();
        }
    }

    /** A day that does not read is today. */
    private static LocalDate day(@Nullable String text, LocalDate today) {
        try {
            return text == null || text.isBlank() ? today : Typed.readDay(text);
        } catch (DateTimeException notADay) {
            return today;
        }
    }

    private TemplateInstance page(LocalDate until, Said form) {
        Frame frame = frames.of(Tab.MONEY);
        List<Collecting.Due> due = collecting.until(until);
        Money sum = Money.sum(
                due.stream().map(one -> one.item().open()).toList(),
                businesses.current().currency());
        CollectedLately.Lately lately = collectedLately.list();
        List<Done> done = lately.payments().stream()
                .map(one -> new Done(
                        one.paymentId(),
                        one.customerId(),
                        one.customer(),
                        frame.brief(one.day()),
                        one.documents(),
                        one.amount().format(frame.locale())))
                .toList();
        return Pages.collection(
                frame,
                new View(
                        until.toString(),
                        due.stream().map(one -> row(one, frame, form)).toList(),
                        sum.format(frame.locale()),
                        done,
                        lately.more()),
                form);
    }

    /** A form that comes back keeps its ticks and the amounts that were drawn. */
    private static Row row(Collecting.Due one, Frame frame, Said form) {
        String id = one.item().id().toString();
        String drawn = form.value("drawn-" + id);
        return new Row(
                one.item().id(),
                frame.brief(one.item().dueDay()),
                one.item().customerId(),
                one.item().customer(),
                one.item().label(),
                one.mandate(),
                one.instalment(),
                one.instalments(),
                one.cameBack(),
                form.refused() ? form.has("invoice", id) : !one.cameBack(),
                one.item().open().format(frame.locale()),
                drawn.isEmpty() ? one.item().open().decimal() : drawn,
                one.debits());
    }
}
