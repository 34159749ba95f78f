package changeover.web.api;

import changeover.billing.reminders.DueReminder;
import changeover.billing.reminders.DueReminders;
import changeover.billing.reminders.Reminders;
import changeover.billing.reminders.RemindersSent;
import changeover.contracts.tenants.Today;
import changeover.web.session.Once;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Who is to be reminded today, and what was written. */
@Path("/api/v1/{slug}/reminders")
@RolesAllowed({"owner", "office"})
public class RemindersApi {

    /** A document that a reminder asks for. */
    public record Named(UUID invoice, String number, LocalDate due, Amount open, int step) {}

    /** A letter that is due today. */
    public record DueDocument(UUID customer, String name, String tone, Amount total, List<Named> documents) {}

    /** A letter that was written. {@code state}: waiting, withdrawn or left. */
    public record WrittenDocument(
            UUID id,
            UUID customer,
            LocalDate day,
            int step,
            String tone,
            String documents,
            Amount asked,
            String way,
            String state,
            @Nullable Instant left) {}

    public record RemindersDocument(List<DueDocument> due, List<WrittenDocument> written) {}

    private static final int SHOWN = 200;

    @Inject
    DueReminders due;

    @Inject
    Reminders reminders;

    @Inject
    RemindersSent sent;

    @Inject
    Today today;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    @GET
    @Transactional
    public RemindersDocument list() {
        return document();
    }

    /** Writes what is due today to {@code customers} (objects with {@code id}); to all where none is named. */
    @POST
    public Response write(@HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "reminders " + body, () -> {
            Asked asked = Asked.of(body, json);
            Set<UUID> customers = asked.each("customers").stream()
                    .map(one -> {
                        UUID id = one.id("id");
                        one.nothingElse();
                        return id;
                    })
                    .collect(Collectors.toSet());
            asked.nothingElse().understood();
            if (customers.isEmpty()) {
                reminders.write();
            } else {
                reminders.write(customers);
            }
            return Once.Answer.done(document());
        });
    }

    private RemindersDocument document() {
        return new RemindersDocument(
                due.on(today.day()).stream().map(RemindersApi::document).toList(),
                sent.newest(null, SHOWN).stream().map(RemindersApi::document).toList());
    }

    private static DueDocument document(DueReminder one) {
        return new DueDocument(
                one.customerId(),
                one.customer(),
                one.step().tone().code(),
                Amount.of(one.total()),
                one.items().stream()
                        .map(asked -> new Named(
                                asked.item().id(),
                                asked.item().label(),
                                asked.item().dueDay(),
                                Amount.of(asked.left()),
                                asked.step().daysLate()))
                        .toList());
    }

    private static WrittenDocument document(RemindersSent.Row row) {
        return new WrittenDocument(
                row.id(),
                row.customerId(),
                row.day(),
                row.daysLate(),
                row.tone().code(),
                row.documents(),
                Amount.of(row.asked()),
                row.way(),
                row.came().name().toLowerCase(Locale.ROOT),
                row.left());
    }
}
