package changeover.billing.invoices;

import changeover.contracts.money.Money;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;
import org.hibernate.id.uuid.UuidVersion7Strategy;
import org.jspecify.annotations.Nullable;

/** Documents in the making, written many at a time. */
@ApplicationScoped
public class Drafts {

    @Inject
    AgroalDataSource datasource;

    /** Writes the drafts with their lines and answers their ids, in the same order. */
    public List<UUID> write(List<Draft> drafts) {
        return write(
                drafts,
                drafts.stream().map(draft -> fromOne(draft.lines().size())).toList());
    }

    /** A credit note's lines stand at the positions of the lines they correct. */
    List<UUID> write(List<Draft> drafts, List<List<Integer>> positions) {
        Rows heads = new Rows(
                "invoice",
                "id uuid, kind text, credits_id uuid, customer_id uuid, home_id uuid, agreement_id uuid, visit_id uuid,"
                        + " visit_version int, instalment int, instalments int, language text, currency text,"
                        + " may_issue_from date, awaits_first_visit boolean, purchase_order text, due_days int,"
                        + " reason_en text, reason_fr text, subtotal_minor bigint");
        Rows lines = lineRows();
        List<UUID> ids = new ArrayList<>(drafts.size());
        for (Draft draft : drafts) {
            UUID id = newId();
            ids.add(id);
            heads.add(
                    id,
                    draft.kind().code(),
                    draft.creditsId(),
                    draft.customerId(),
                    draft.homeId(),
                    draft.agreementId(),
                    draft.visitId(),
                    draft.visitVersion(),
                    draft.instalment(),
                    draft.instalments(),
                    draft.language(),
                    draft.currency(),
                    draft.mayIssueFrom(),
                    draft.awaitsFirstVisit(),
                    draft.purchaseOrder(),
                    draft.dueDays(),
                    draft.reason() == null ? null : draft.reason().en(),
                    draft.reason() == null ? null : draft.reason().fr(),
                    draft.subtotal().minor());
            addLines(lines, id, positions.get(ids.size() - 1), draft.lines());
        }
        try (Connection connection = datasource.getConnection()) {
            heads.insert(connection);
            lines.insert(connection);
            GrownTables.lookAgain(connection, lines.size());
        } catch (SQLException cause) {
            throw new IllegalStateException("the drafts could not be written", cause);
        }
        return ids;
    }

    static List<Integer> fromOne(int count) {
        return IntStream.rangeClosed(1, count).boxed().toList();
    }

    static Rows lineRows() {
        return new Rows(
                "invoice_line",
                "id uuid, invoice_id uuid, position int, home_id uuid, agreement_id uuid, visit_id uuid,"
                        + " visit_version int, day date, kind text, item_code text, part_kind text, coverage text, work text, contract_form text,"
                        + " words_en text, words_fr text, why_en text, why_fr text, quantity numeric, unit text,"
                        + " unit_price_minor bigint, discount_percent numeric, discount_minor bigint,"
                        + " net_minor bigint");
    }

    static void addLines(Rows rows, UUID invoice, List<Integer> positions, List<DraftLine> lines) {
        for (int at = 0; at < lines.size(); at++) {
            DraftLine line = lines.get(at);
            rows.add(
                    newId(),
                    invoice,
                    positions.get(at),
                    line.homeId(),
                    line.agreementId(),
                    line.visitId(),
                    line.visitVersion(),
                    line.day(),
                    line.kind(),
                    line.itemCode(),
                    line.partKind(),
                    line.covered().code(),
                    line.work().code(),
                    line.form().code(),
                    line.words().en(),
                    line.words().fr(),
                    line.why().en(),
                    line.why().fr(),
                    line.quantity().toPlainString(),
                    line.unit(),
                    minor(line.unitPrice()),
                    line.discountPercent().toPlainString(),
                    line.discount().minor(),
                    line.net().minor());
        }
    }

    static UUID newId() {
        return UuidVersion7Strategy.INSTANCE.generateUuid(null);
    }

    private static @Nullable Long minor(@Nullable Money money) {
        return money == null ? null : money.minor();
    }
}
