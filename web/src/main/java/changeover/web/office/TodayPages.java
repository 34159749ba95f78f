package changeover.web.office;

import changeover.billing.documents.band.DayWords;
import changeover.billing.estimates.Estimates;
import changeover.billing.notices.Outbox;
import changeover.billing.papers.BusinessPapers;
import changeover.billing.payments.InvoiceLists;
import changeover.billing.payments.Owed;
import changeover.billing.payments.OwedBy;
import changeover.billing.payments.Standing;
import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.scheduling.calls.CallLists;
import changeover.scheduling.closeout.FollowUps;
import changeover.scheduling.dayplan.Due;
import changeover.scheduling.dayplan.DueCounts;
import changeover.scheduling.dayplan.DueVisit;
import changeover.scheduling.instruments.Instruments;
import changeover.scheduling.orders.OrderLists;
import changeover.scheduling.stopped.StopLists;
import changeover.scheduling.visits.StillUnread;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.StopInWords;
import changeover.web.session.Tab;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Today, in sentences: what is late, what is due, who owes an answer, who owes money. */
@Path("/{slug}/today")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class TodayPages {

    private static final int SHOWN = 8;

    /** A visit in a list, its days in words. */
    public record Visit(
            UUID id,
            UUID homeId,
            String home,
            String customer,
            String plan,
            String last,
            long daysLate,
            int minutes,
            int tasks,
            String day,
            @Nullable String technician) {}

    public record Money(
            String late, String open, String owed, int lateDocuments, int documents, int drafts, String draftsAmount) {}

    public record Letters(int notSent, int toPrint) {}

    /** A sold home that somebody has visited and whose machines nobody has entered. */
    public record Unread(UUID homeId, String home, String customer, String visited) {}

    /** The page in one piece. */
    public record View(
            boolean first,
            String weekday,
            CallLists.Counts calls,
            Estimates.Counts estimates,
            int toEstimate,
            OrderLists.Counts orders,
            List<StopInWords.View> stops,
            List<ReviewRows.Line> reviews,
            DueCounts counts,
            List<Visit> late,
            List<Visit> due,
            List<AnswersWaiting.Answer> answers,
            List<Unread> unread,
            String tomorrow,
            List<TicketsOut.Row> tickets,
            List<OwnPaperPages.Line> papers,
            PartnersToday.View partners,
            List<InstrumentPages.Line> instruments,
            SeasonChart.Weeks weeks,
            String weeksFrom,
            String weeksUntil,
            Money money,
            Letters letters) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance today(Frame frame, View view);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Homes homes;

    @Inject
    CallLists calls;

    @Inject
    Estimates estimates;

    @Inject
    FollowUps followUps;

    @Inject
    OrderLists orders;

    @Inject
    StopLists stops;

    @Inject
    StopInWords stopWords;

    @Inject
    ReviewRows reviews;

    @Inject
    Today today;

    @Inject
    Due due;

    @Inject
    AnswersWaiting answers;

    @Inject
    StillUnread unread;

    @Inject
    TicketsOut tickets;

    @Inject
    BusinessPapers papers;

    @Inject
    PartnersToday partners;

    @Inject
    Instruments instruments;

    @Inject
    SeasonChart season;

    @Inject
    Owed owed;

    @Inject
    InvoiceLists invoices;

    @Inject
    Outbox outbox;

    @Inject
    Businesses businesses;

    @GET
    @Transactional
    public TemplateInstance today() {
        Frame frame = frames.of(Tab.TODAY);
        LocalDate day = frame.today();
        DayWords words = DayWords.of(frame.locale());
        String from = words.brief(season.first(day));
        String until = words.brief(season.last(day));
        String title = frame.locale().getLanguage().equals("fr")
                ? "Heures de visites par semaine, du " + from + " au " + until
                : "Hours of visits by week, " + from + " to " + until;
        return Pages.today(
                frame,
                new View(
                        homes.count() == 0,
                        words.withWeekday(day),
                        calls.counts(today.now()),
                        estimates.counts(),
                        followUps.countToEstimate(),
                        orders.counts(day),
                        stopWords.of(stops.open(), frame),
                        reviews.waiting(frame),
                        due.counts(day),
                        due.late(day, 0, SHOWN).stream()
                                .map(visit -> visit(visit, frame))
                                .toList(),
                        due.withoutDay(day, 0, SHOWN).stream()
                                .map(visit -> visit(visit, frame))
                                .toList(),
                        answers.waiting(frame, SHOWN),
                        unread.after(day, SHOWN).stream()
                                .map(home -> new Unread(
                                        home.homeId(), home.home(), home.customer(), frame.brief(home.visited())))
                                .toList(),
                        day.plusDays(1).toString(),
                        tickets.rows(frame),
                        papers.runningOut(day).stream()
                                .map(one -> OwnPaperPages.line(one, frame))
                                .toList(),
                        partners.of(frame),
                        instruments.runningOut(day).stream()
                                .map(one -> InstrumentPages.line(one, frame))
                                .toList(),
                        season.of(frame, title),
                        from,
                        until,
                        money(frame),
                        new Letters(outbox.countNotSent(), outbox.countToPrint())));
    }

    private Money money(Frame frame) {
        OwedBy all = owed.all(frame.today());
        var drafts =
                invoices.sums(frame.today(), businesses.current().currency()).get(Standing.READY);
        return new Money(
                all.late().format(frame.locale()),
                all.notDue().format(frame.locale()),
                all.open().format(frame.locale()),
                all.lateDocuments(),
                all.documents() - all.lateDocuments(),
                drafts == null ? 0 : drafts.documents(),
                drafts == null ? "" : drafts.amount().format(frame.locale()));
    }

    static Visit visit(DueVisit visit, Frame frame) {
        LocalDate last = visit.window().last();
        return new Visit(
                visit.visitId(),
                visit.homeId(),
                visit.home(),
                visit.customer() == null ? "" : visit.customer(),
                visit.plan() == null ? "" : visit.plan().in(frame.locale()),
                frame.brief(last),
                ChronoUnit.DAYS.between(last, frame.today()),
                visit.minutes(),
                visit.tasks(),
                visit.day() == null ? "" : frame.brief(visit.day()),
                visit.technician());
    }
}
