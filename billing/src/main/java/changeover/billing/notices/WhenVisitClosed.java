package changeover.billing.notices;

import changeover.billing.documents.DayInPaper;
import changeover.billing.documents.PaperKind;
import changeover.billing.documents.Wanted;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Locales;
import changeover.scheduling.closeout.VisitAmended;
import changeover.scheduling.closeout.VisitClosed;
import changeover.scheduling.reviews.ClosureReviewed;
import changeover.scheduling.reviews.Reviews;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/**
 * The report of a closed visit goes to whoever gets it; after an amendment they get the next version. One that waits for a review
 * goes when somebody has said yes.
 */
@ApplicationScoped
class WhenVisitClosed {

    private static final String LAST_WHY = "select why from amendment where tenant_id = current_tenant()"
            + " and visit_id = ?::uuid order by version desc limit 1";

    @Inject
    Reviews reviews;

    @Inject
    Recipients recipients;

    @Inject
    Outbox outbox;

    @Inject
    Businesses businesses;

    @Inject
    AgroalDataSource database;

    void write(@Observes VisitClosed closed) {
        if (!reviews.isHeld(closed.visitId())) {
            write(new Told(closed.visitId(), closed.homeId(), closed.day(), 1), "report.", "");
        }
    }

    /** Whoever has had no report yet gets the corrected one as their first. */
    void writeAgain(@Observes VisitAmended amended) {
        VisitClosed now = amended.now();
        if (reviews.isHeld(now.visitId())) {
            return;
        }
        String why = one(
                "select why from amendment where tenant_id = current_tenant() and id = ?::uuid", amended.amendmentId());
        write(new Told(now.visitId(), now.homeId(), now.day(), amended.version()), "report.again-", why);
    }

    /** What a household has in its hands already is followed by the new one. */
    void writeReviewed(@Observes ClosureReviewed reviewed) {
        Told visit = new Told(reviewed.visitId(), reviewed.homeId(), reviewed.day(), reviewed.version());
        boolean again = outbox.about(reviewed.visitId()).stream()
                .anyMatch(message -> message.kind().equals("report"));
        write(visit, again ? "report.again-" : "report.", again ? one(LAST_WHY, reviewed.visitId()) : "");
    }

    /** A closed visit as its report tells of it. */
    private record Told(UUID visitId, UUID homeId, LocalDate day, int version) {}

    private void write(Told visit, String key, String why) {
        String home = one(
                "select street || coalesce(', ' || unit_label, '') from home where tenant_id = current_tenant()"
                        + " and id = ?::uuid",
                visit.homeId());
        String business = businesses.current().name();
        String phone = businesses.profile().facts().phone();
        List<NewMessage> messages = new ArrayList<>();
        for (Recipient reader : recipients.ofReport(visit.homeId(), visit.day())) {
            String day = DayInPaper.of(visit.day(), Locales.of(reader.language()));
            LetterText text = LetterText.of(
                    reader.language(),
                    key + "subject",
                    key + "body",
                    reader.name(),
                    business,
                    phone,
                    Map.of("day", day, "home", home, "why", why));
            messages.add(new NewMessage(
                    "report",
                    visit.visitId(),
                    visit.version(),
                    visit.homeId(),
                    reader,
                    text.subject(),
                    text.body(),
                    List.of(new Wanted(PaperKind.REPORT, visit.visitId(), visit.version()))));
        }
        outbox.write(messages);
    }

    private String one(String sql, UUID id) {
        try (var connection = database.getConnection();
                PreparedStatement select = connection.prepareStatement(sql)) {
            select.setString(1, id.toString());
            try (ResultSet row = select.executeQuery()) {
                return row.next() && row.getString(1) != null ? row.getString(1) : "";
            }
        } catch (SQLException cause) {
            throw new IllegalStateException(cause);
        }
    }
}
