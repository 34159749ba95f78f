package changeover.web.office;

import changeover.billing.notices.LettersToCustomers;
import changeover.billing.notices.Recipient;
import changeover.billing.reminders.DueReminder;
import changeover.billing.reminders.DueReminders;
import changeover.billing.reminders.Hold;
import changeover.billing.reminders.Holds;
import changeover.billing.reminders.Ladders;
import changeover.billing.reminders.Reminders;
import changeover.billing.reminders.RemindersSent;
import changeover.contracts.customers.Customer;
import changeover.contracts.customers.Customers;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refusals;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
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
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.ZoneId;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Who is to be reminded today, what was written, and who is held back. */
@Path("/{slug}/money/reminders")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class ReminderPages {

    private static final int SHOWN = 50;

    /** A letter that is due; {@code days} is how long its oldest document is late. */
    public record Due(
            UUID customer, String name, String tone, long days, String documents, String total, boolean mail) {}

    /** A letter that was written; {@code came} is waiting, withdrawn or left. */
    public record Written(
            String day,
            UUID customer,
            String name,
            String tone,
            String documents,
            String asked,
            boolean mail,
            String came,
            String left) {}

    public record Held(UUID customer, String name, String document, String kind, String why, String until) {}

    public record View(boolean ladder, String how, List<Due> due, List<Written> written, List<Held> held) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance reminders(Frame frame, View view, List<String> refused);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Ladders ladders;

    @Inject
    DueReminders due;

    @Inject
    Reminders reminders;

    @Inject
    RemindersSent sent;

    @Inject
    Holds holds;

    @Inject
    LettersToCustomers letters;

    @Inject
    Customers customers;

    @Inject
    Businesses businesses;

    @GET
    @Transactional
    public TemplateInstance list() {
        return page(List.of());
    }

    /** Writes what is due to the chosen customers, as it stands now. */
    @POST
    public Response send(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        Set<String> chosen = new HashSet<>(new Typed(fields).each("customer"));
        return desk.answer(
                () -> {
                    if (chosen.isEmpty()) {
                        throw Refusal.of("reminder.choose").thrown();
                    }
                    Set<UUID> theirs = due.on(frames.of(Tab.MONEY).today()).stream()
                            .map(DueReminder::customerId)
                            .filter(id -> chosen.contains(id.toString()))
                            .collect(Collectors.toSet());
                    if (reminders.write(theirs) == 0) {
                        throw Refusal.of("reminder.none-due").thrown();
                    }
                    return SaidOnce.at("/" + slug + "/money/reminders", "reminders-written");
                },
                refusals -> page(refusals.stream()
                        .map(refusal -> Refusals.sentence(refusal, frames.locale()))
                        .toList()));
    }

    private TemplateInstance page(List<String> refused) {
        Frame frame = frames.of(Tab.MONEY);
        List<DueReminder> all = due.on(frame.today());
        Map<UUID, Recipient> readers =
                letters.readers(all.stream().map(DueReminder::customerId).toList());
        return Pages.reminders(
                frame,
                new View(
                        !ladders.ladder().steps().isEmpty(),
                        ladders.how().code(),
                        all.stream()
                                .map(one -> due(one, readers.get(one.customerId()), frame))
                                .toList(),
                        sent.newest(null, SHOWN).stream()
                                .map(row -> written(row, frame))
                                .toList(),
                        held(frame)),
                refused);
    }

    private static Due due(DueReminder one, @Nullable Recipient reader, Frame frame) {
        return new Due(
                one.customerId(),
                one.customer(),
                one.step().tone().code(),
                one.items().stream()
                        .mapToLong(asked -> asked.daysLate(frame.today()))
                        .max()
                        .orElse(0),
                one.items().stream().map(asked -> asked.item().label()).collect(Collectors.joining(", ")),
                one.total().format(frame.locale()),
                reader != null && reader.hasMail());
    }

    private Written written(RemindersSent.Row row, Frame frame) {
        ZoneId zone = businesses.current().zone();
        return new Written(
                frame.brief(row.day()),
                row.customerId(),
                row.customer(),
                row.tone().code(),
                row.documents(),
                row.asked().format(frame.locale()),
                row.way().equals("mail"),
                row.came().name().toLowerCase(Locale.ROOT),
                row.left() == null ? "" : frame.brief(row.left().atZone(zone).toLocalDate()));
    }

    private List<Held> held(Frame frame) {
        List<Hold> standing = holds.standing(frame.today());
        Map<UUID, Customer> known = customers
                .all(standing.stream().map(Hold::customerId).distinct().toList())
                .stream()
                .collect(Collectors.toMap(Customer::id, Function.identity()));
        return standing.stream()
                .map(hold -> new Held(
                        hold.customerId(),
                        Objects.requireNonNull(known.get(hold.customerId())).name(),
                        hold.label() == null ? "" : hold.label(),
                        hold.kind().code(),
                        hold.why(),
                        hold.until() == null ? "" : frame.brief(hold.until())))
                .toList();
    }
}
