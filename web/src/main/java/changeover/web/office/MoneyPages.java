package changeover.web.office;

import changeover.billing.invoices.Invoices;
import changeover.billing.payments.InvoiceFilter;
import changeover.billing.payments.InvoiceLists;
import changeover.billing.payments.InvoiceRow;
import changeover.billing.payments.Owed;
import changeover.billing.payments.OwedBy;
import changeover.billing.payments.Standing;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
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
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriBuilder;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What may be issued, what is owed, and what is late: the first of each, with how many there are and their sum. */
@Path("/{slug}/money")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class MoneyPages {

    /** What a draft waits for. */
    static final Standing[] WAITING = {Standing.REVIEW, Standing.AWAITING, Standing.UNPRICED, Standing.LATER};

    /** A document as a row: amounts and days already in words. */
    public record Row(
            UUID id,
            String label,
            String customer,
            UUID customerId,
            String street,
            String when,
            String amount,
            long days,
            String stands) {}

    /** The first documents of a standing, and how many there are in all with their sum. */
    public record Group(List<Row> rows, int count, String sum) {

        public boolean cut() {
            return count > rows.size();
        }
    }

    /** How old what is owed is, a line each. */
    public record Age(
            String notDue,
            String late30,
            String late60,
            String late90,
            String older,
            String open,
            String credit,
            String beyond) {}

    /** The page in one piece. */
    public record View(Group ready, Group late, Group open, List<Waiting> waiting, int waits, Age age) {}

    /** Drafts that wait, and what for. */
    public record Waiting(String standing, Row row) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance money(Frame frame, View view, List<String> refused);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    InvoiceLists lists;

    @Inject
    Invoices invoices;

    @Inject
    Owed owed;

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    /** As it stands today; on another day it is the page of that day's figures. */
    @GET
    @Transactional
    public Response money(@PathParam("slug") String slug, @Nullable @QueryParam("day") String day) {
        return day == null
                ? Response.ok(page(List.of())).build()
                : Response.seeOther(UriBuilder.fromPath("/{slug}/money/earned")
                                .queryParam("day", "{day}")
                                .build(slug, day))
                        .build();
    }

    /** Issues the chosen drafts in one transaction; those that cannot be are named and stay drafts. */
    @POST
    @Path("issues")
    public Response issue(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        List<UUID> chosen =
                new Typed(fields).each("draft").stream().flatMap(MoneyPages::id).toList();
        return desk.answer(
                () -> {
                    if (chosen.isEmpty()) {
                        throw Refusal.of("money.choose-drafts").thrown();
                    }
                    var outcome = invoices.issue(chosen, today.day());
                    if (outcome.issued().isEmpty()) {
                        throw new changeover.contracts.words.Refused(
                                outcome.refused().values().stream().distinct().toList());
                    }
                    String next = "/" + slug + "/money";
                    return SaidOnce.at(next, outcome.refused().isEmpty() ? "issued" : "issued-some");
                },
                refusals -> page(refusals.stream()
                        .map(refusal -> Refusals.sentence(refusal, frames.locale()))
                        .toList()));
    }

    private static Stream<UUID> id(String text) {
        try {
            return Stream.of(UUID.fromString(text));
        } catch (IllegalArgumentException notAnId) {
            return Stream.empty();
        }
    }

    private TemplateInstance page(List<String> refused) {
        Frame frame = frames.of(Tab.MONEY);
        LocalDate day = frame.today();
        var sums = lists.sums(day, businesses.current().currency());
        List<Waiting> waiting = lists.rows(InvoiceFilter.standing(WAITING).page(0, 20), day).stream()
                .map(row -> new Waiting(row.standing().code(), row(row, frame)))
                .toList();
        return Pages.money(
                frame,
                new View(
                        group(Standing.READY, 100, sums, frame),
                        group(Standing.LATE, 100, sums, frame),
                        group(Standing.OPEN, 50, sums, frame),
                        waiting,
                        Stream.of(WAITING)
                                .mapToInt(one -> known(sums, one).documents())
                                .sum(),
                        age(owed.all(day), frame)),
                refused);
    }

    /** The count and the sum are those of all of them, however many are shown here. */
    private Group group(Standing standing, int shown, Map<Standing, InvoiceLists.Sum> sums, Frame frame) {
        InvoiceLists.Sum all = known(sums, standing);
        return new Group(
                lists.rows(InvoiceFilter.standing(standing).page(0, shown), frame.today()).stream()
                        .map(row -> row(row, frame))
                        .toList(),
                all.documents(),
                all.amount().format(frame.locale()));
    }

    private static InvoiceLists.Sum known(Map<Standing, InvoiceLists.Sum> sums, Standing standing) {
        return Objects.requireNonNull(sums.get(standing));
    }

    static Row row(InvoiceRow row, Frame frame) {
        LocalDate day = row.dueDay() == null ? row.day() : row.dueDay();
        Money shown = row.standing() == Standing.OPEN || row.standing() == Standing.LATE ? row.open() : row.amount();
        return new Row(
                row.id(),
                row.label() == null ? "" : row.label(),
                row.customer(),
                row.customerId(),
                row.street(),
                frame.brief(day),
                shown.format(frame.locale()),
                ChronoUnit.DAYS.between(day, frame.today()),
                row.standing().code());
    }

    private static Age age(OwedBy owed, Frame frame) {
        return new Age(
                owed.notDue().format(frame.locale()),
                owed.late30().format(frame.locale()),
                owed.late60().format(frame.locale()),
                owed.late90().format(frame.locale()),
                owed.older().isZero() ? "" : owed.older().format(frame.locale()),
                owed.open().format(frame.locale()),
                owed.credit().isZero() ? "" : owed.credit().format(frame.locale()),
                owed.beyond().isZero() ? "" : owed.beyond().format(frame.locale()));
    }
}
