package changeover.billing.invoices;

import changeover.billing.pricing.Charge.Covered;
import changeover.billing.tax.ContractForm;
import changeover.billing.tax.Work;
import changeover.contracts.money.Money;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Types;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What a person writes on one draft's lines; a credit note's stand as the invoice that it corrects. */
final class HandWork {

    private static final int MOST_LINES = 300;

    private final Connection connection;
    private final DraftByHand draft;
    private final @Nullable UUID home;
    private final List<HandRow> rows;

    HandWork(Connection connection, DraftByHand draft, @Nullable UUID home) throws SQLException {
        this.connection = connection;
        this.draft = draft;
        this.home = home;
        this.rows = HandRow.of(connection, draft.id(), draft.currency());
    }

    void write(DraftChange change) throws SQLException {
        Map<Integer, DraftChange.Kept> kept = new HashMap<>();
        for (DraftChange.Kept one : change.kept()) {
            if (kept.put(one.position(), one) != null
                    || rows.stream().noneMatch(row -> row.position() == one.position())) {
                throw Refusal.of("invoice.no-such-line", Map.of("position", one.position()))
                        .thrown();
            }
        }
        if (kept.size() + change.added().size() > MOST_LINES) {
            throw Refusal.of("invoice.too-many-lines", Map.of("most", MOST_LINES))
                    .thrown();
        }
        boolean changed = !change.added().isEmpty();
        for (HandRow row : rows) {
            DraftChange.Kept one = kept.get(row.position());
            if (one == null) {
                takeOff(row);
                changed = true;
            } else {
                changed |= rewrite(row, one);
            }
        }
        if (changed && draft.kind() == DocumentKind.CREDIT) {
            throw Refusal.of("credit.lines-stand").thrown();
        }
        add(change.added());
        if (changed) {
            Most.total(Money.sum(
                    HandRow.of(connection, draft.id(), draft.currency()).stream()
                            .map(HandRow::net)
                            .toList(),
                    draft.currency()));
        }
    }

    private boolean rewrite(HandRow row, DraftChange.Kept one) throws SQLException {
        Wording words = said(row.words(), one);
        BigDecimal quantity = one.quantity() == null ? row.quantity() : counted(one.quantity());
        Money price = one.unitPrice() == null ? row.unitPrice() : one.unitPrice();
        Work work = one.work() == null ? row.work() : one.work();
        ContractForm form = one.form() == null ? row.form() : one.form();
        boolean sameQuantity = quantity.compareTo(row.quantity()) == 0;
        boolean sameCase = work == row.work() && form == row.form();
        if (words.equals(row.words()) && sameQuantity && Objects.equals(price, row.unitPrice()) && sameCase) {
            return false;
        }
        if (row.included() && !Objects.equals(price, row.unitPrice())) {
            throw Refusal.of("invoice.included-has-no-price").at(one.at()).thrown();
        }
        Money nought = Money.zero(draft.currency());
        Money gross = price == null || row.included() ? nought : Most.line(price, quantity, one.at());
        Money discount = gross.percent(row.discountPercent());
        boolean sameAmount = sameQuantity && Objects.equals(price, row.unitPrice());
        try (PreparedStatement update = connection.prepareStatement("""
                update invoice_line set words_en = ?, words_fr = ?, quantity = ?, unit_price_minor = ?,
                       discount_minor = case when ? then discount_minor else ? end,
                       net_minor = case when ? then net_minor else ? end,
                       by_hand = true, reckoned_quantity = ?, reckoned_minor = ?, work = ?, contract_form = ?
                 where id = ?""")) {
            update.setString(1, words.en());
            update.setString(2, words.fr());
            update.setBigDecimal(3, quantity);
            update.setObject(4, price == null ? null : price.minor(), Types.BIGINT);
            update.setBoolean(5, sameAmount);
            update.setLong(6, discount.minor());
            update.setBoolean(7, sameAmount);
            update.setLong(8, gross.minus(discount).minor());
            update.setBigDecimal(9, row.reckonedQuantity());
            update.setObject(10, row.reckonedMinor(), Types.BIGINT);
            update.setString(11, work.code());
            update.setString(12, form.code());
            update.setObject(13, row.id());
            update.executeUpdate();
        }
        return true;
    }

    /** Other words stand for both languages, unless a document in English was given its French beside them. */
    private Wording said(Wording before, DraftChange.Kept one) {
        Wording words = one.words() == null || one.words().equals(before.in(draft.language()))
                ? before
                : new Wording(one.words(), one.words());
        boolean inFrench = draft.language().getLanguage().equals("fr");
        return one.french() == null || inFrench ? words : new Wording(words.en(), one.french());
    }

    /** A line that only a person wrote goes without a trace beyond the log of changes. */
    private void takeOff(HandRow row) throws SQLException {
        if (row.reckonedMinor() != null) {
            try (PreparedStatement off = connection.prepareStatement("""
                    insert into line_taken_off (invoice_id, visit_id, kind, item_code, coverage, words_en, words_fr,
                        reckoned_quantity, reckoned_minor)
                    values (?, ?, ?, ?, ?, ?, ?, ?, ?)""")) {
                off.setObject(1, draft.id());
                off.setObject(2, row.visitId());
                off.setString(3, row.kind());
                off.setString(4, row.item());
                off.setString(5, row.coverage());
                off.setString(6, row.words().en());
                off.setString(7, row.words().fr());
                off.setBigDecimal(8, row.reckonedQuantity());
                off.setLong(9, row.reckonedMinor());
                off.executeUpdate();
            }
        }
        try (PreparedStatement gone = connection.prepareStatement("delete from invoice_line where id = ?")) {
            gone.setObject(1, row.id());
            gone.executeUpdate();
        }
    }

    private void add(List<DraftChange.Added> added) throws SQLException {
        if (added.isEmpty()) {
            return;
        }
        UUID place = home != null
                ? home
                : rows.stream()
                        .map(HandRow::homeId)
                        .filter(Objects::nonNull)
                        .findFirst()
                        .orElseThrow(() -> Refusal.of("invoice.no-place").thrown());
        LocalDate day = rows.isEmpty() ? draft.mayIssueFrom() : rows.getFirst().day();
        List<DraftLine> lines = new ArrayList<>();
        for (DraftChange.Added one : added) {
            lines.add(line(one, place, day));
        }
        int after = DraftHead.lastPosition(connection, draft.id());
        Rows inserted = Drafts.lineRows();
        Drafts.addLines(
                inserted,
                draft.id(),
                Drafts.fromOne(lines.size()).stream().map(at -> at + after).toList(),
                lines);
        inserted.insert(connection);
        try (PreparedStatement mark = connection.prepareStatement(
                "update invoice_line set by_hand = true where invoice_id = ? and position > ?")) {
            mark.setObject(1, draft.id());
            mark.setInt(2, after);
            mark.executeUpdate();
        }
    }

    private DraftLine line(DraftChange.Added one, UUID place, LocalDate day) {
        BigDecimal quantity = counted(one.quantity());
        return new DraftLine(
                place,
                null,
                null,
                null,
                day,
                "other",
                null,
                null,
                Covered.BILLABLE,
                one.work(),
                one.form(),
                one.wording(),
                new Wording("", ""),
                quantity,
                one.unit(),
                one.unitPrice(),
                BigDecimal.ZERO,
                Money.zero(draft.currency()),
                Most.line(one.unitPrice(), quantity, one.at()));
    }

    /** To the fourth decimal, like the column that keeps it. */
    private static BigDecimal counted(BigDecimal quantity) {
        if (quantity.compareTo(DraftChange.LEAST) < 0
                || quantity.compareTo(DraftChange.MOST) > 0
                || quantity.stripTrailingZeros().scale() > 4) {
            throw Refusal.of("invoice.quantity").thrown();
        }
        return quantity;
    }
}
