package changeover.billing.invoices;

import changeover.contracts.tenants.Locales;
import changeover.contracts.words.FilledOn;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Wording;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Until a draft is issued a person may write, change and take off its lines and change its terms. What a person wrote is
 * marked as theirs and stays as they wrote it: when the visit is amended, when missing prices are taken, and when drafts
 * are joined into one document.
 */
@ApplicationScoped
public class DraftsByHand {

    /** The units of a line that a person writes, by UN/ECE Recommendation 20. */
    public static final List<String> UNITS =
            List.of("C62", "HUR", "MIN", "DAY", "KMT", "MTR", "FOT", "LTR", "KGM", "LBR", "SET");

    /** The kinds of work that a person may name for a line; a fee is none. */
    public static final Set<String> WORKS = Set.of("maintenance", "repair", "installation");

    /** How the price of a line may have been agreed. */
    public static final Set<String> FORMS = Set.of("plan", "separate", "lump_sum");

    @Inject
    EntityManager session;

    @Inject
    AgroalDataSource datasource;

    @Inject
    Invoices invoices;

    /** Empty for an issued document, for a discarded draft and for what is not the business's. */
    public Optional<DraftByHand> of(UUID id) {
        if (invoices.draft(id).isEmpty()) {
            return Optional.empty();
        }
        session.flush();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement("""
                        select version, kind, language, currency, may_issue_from, purchase_order, due_days
                          from invoice where id = ?""")) {
            select.setObject(1, id);
            ResultSet row = select.executeQuery();
            row.next();
            var language = Locales.of(row.getString(3));
            Currency currency = Currency.getInstance(row.getString(4));
            List<HandRow> lines = HandRow.of(connection, id, currency);
            List<Wording> off = new ArrayList<>();
            boolean changed = takenOff(connection, id, off);
            return Optional.of(new DraftByHand(
                    id,
                    row.getInt(1),
                    DocumentKind.of(row.getString(2)),
                    language,
                    currency,
                    row.getObject(5, LocalDate.class),
                    row.getString(6),
                    row.getInt(7),
                    changed || lines.stream().anyMatch(HandRow::visitChanged),
                    lines.stream().map(line -> line.shown(language)).toList(),
                    List.copyOf(off)));
        } catch (SQLException cause) {
            throw new IllegalStateException("the draft could not be read", cause);
        }
    }

    /** @return whether the amended visit says otherwise of one of them */
    private static boolean takenOff(Connection connection, UUID id, List<Wording> off) throws SQLException {
        boolean changed = false;
        try (PreparedStatement select = connection.prepareStatement(
                "select words_en, words_fr, visit_changed from line_taken_off where invoice_id = ? order by id")) {
            select.setObject(1, id);
            ResultSet row = select.executeQuery();
            while (row.next()) {
                off.add(new Wording(row.getString(1), row.getString(2)));
                changed |= row.getBoolean(3);
            }
        }
        return changed;
    }

    /**
     * Changes the draft, whole; it was looked at as it stands, so that an amended visit's mark is taken off.
     *
     * @throws changeover.contracts.words.Refused when somebody changed, issued or discarded it since, or a line is refused
     */
    public void change(UUID id, FilledOn filledOn, DraftChange change) {
        session.flush();
        try (Connection connection = datasource.getConnection()) {
            DraftHead.lock(connection, id);
            Invoice draft =
                    invoices.draft(id).orElseThrow(() -> invoices.notADraft(id).thrown());
            session.refresh(draft);
            filledOn.mustBe(draft.version());
            DraftByHand now = of(id).orElseThrow();
            rewriteTerms(draft, change.terms());
            session.flush();
            session.detach(draft);
            new HandWork(connection, now, draft.homeId()).write(change);
            looked(connection, id);
            DraftHead.follow(connection, id);
        } catch (SQLException cause) {
            throw new IllegalStateException("the draft could not be changed", cause);
        }
    }

    private static void rewriteTerms(Invoice draft, DraftChange.@Nullable Terms terms) {
        if (terms == null) {
            return;
        }
        draft.orderedUnder(terms.purchaseOrder());
        if (draft.kind() != DocumentKind.CREDIT) {
            draft.dueIn(terms.dueDays());
        }
        if (draft.kind() == DocumentKind.PLAN && terms.mayIssueFrom().isBefore(draft.mayIssueFrom())) {
            throw Refusal.of("invoice.plan-not-earlier").at("mayIssueFrom").thrown();
        }
        draft.issueFrom(terms.mayIssueFrom());
    }

    private static void looked(Connection connection, UUID id) throws SQLException {
        for (String table : Set.of("invoice_line", "line_taken_off")) {
            try (PreparedStatement mark = connection.prepareStatement(
                    "update " + table + " set visit_changed = false where invoice_id = ? and visit_changed")) {
                mark.setObject(1, id);
                mark.executeUpdate();
            }
        }
    }
}
