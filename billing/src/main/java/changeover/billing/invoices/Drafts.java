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
import org.hibernate.id.uuid.UuidVersion7Strategy;
import org.jspecify.annotations.Nullable;

/** Documents in the making, written many at a time. */
@ApplicationScoped
public class Drafts {

    @Inject
    AgroalDataSource datasource;

    /** Writes the drafts with their lines and answers their ids, in the same order. */
    public List<UUID> write(List<Draft> drafts) {
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
            addLines(lines, id, 1, draft.lines());
        }
        try (Connection connection = datasource.getConnection()) {
            heads.insert(connection);
            lines.insert(connection);
        } catch (SQLException cause) {
            throw new IllegalStateException("the drafts could not be written", cause);
        }
        return ids;
    }

    static Rows lineRows() {
        return new Rows(
                "invoice_line",
                "id uuid, invoice_id uuid, position int, home_id uuid, agreement_id uuid, visit_id uuid, day date,"
                        + " kind text, item_code text, part_kind text, coverage text, work text, contract_form text,"
                        + " words_en text, words_fr text, why_en text, why_fr text, quantity numeric, unit text,"
                        + " unit_price_minor bigint, discount_percent numeric, discount_minor bigint,"
                        + " net_minor bigint");
    }

    static void addLines(Rows rows, UUID invoice, int first, List<DraftLine> lines) {
        int position = first;
        for (DraftLine line : lines) {
            rows.add(
                    newId(),
                    invoice,
                    position++,
                    line.homeId(),
                    line.agreementId(),
                    line.visitId(),
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
