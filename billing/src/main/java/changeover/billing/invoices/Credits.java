package changeover.billing.invoices;

import changeover.billing.pricing.Charge.Covered;
import changeover.contracts.money.Money;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Wording;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;

/** Credit notes: drafts that give back, in whole or in part, what an issued invoice charged. */
@ApplicationScoped
public class Credits {

    @Inject
    AgroalDataSource datasource;

    @Inject
    InvoiceRows rows;

    @Inject
    Judging judging;

    @Inject
    Drafts drafts;

    /**
     * Gives back everything that is not credited yet.
     *
     * @return the draft of the credit note, to be issued like any document
     * @throws changeover.contracts.words.Refused for a draft, or when nothing is left
     */
    public UUID inFull(UUID invoice, LocalDate day, Wording why) {
        return write(invoice, day, why, (credit, line) -> credit.left(line.position()));
    }

    /**
     * Gives back a part of some lines, before tax.
     *
     * @param parts by the position of the invoice's line
     * @throws changeover.contracts.words.Refused beyond what was charged
     */
    public UUID inPart(UUID invoice, LocalDate day, Map<Integer, Money> parts, Wording why) {
        Map<Integer, Money> asked = new TreeMap<>(parts);
        UUID id = write(invoice, day, why, (credit, line) -> {
            Money part = asked.remove(line.position());
            if (part == null) {
                return 0;
            }
            if (part.isNegative() || part.minor() > credit.left(line.position())) {
                throw Refusal.of("credit.more-than-charged").at("parts").thrown();
            }
            return part.minor();
        });
        if (!asked.isEmpty()) {
            throw Refusal.of(
                            "credit.no-such-line",
                            Map.of("position", asked.keySet().iterator().next()))
                    .at("parts")
                    .thrown();
        }
        return id;
    }

    /**
     * Gives back what is left of one visit's lines, on its own invoice or on a joint one; nothing when a person gave all of
     * it back already.
     */
    Optional<UUID> ofVisit(UUID invoice, UUID visit, LocalDate day, Wording why) {
        return written(
                invoice, day, why, (credit, line) -> visit.equals(line.visitId()) ? credit.left(line.position()) : 0);
    }

    private interface HowMuch {
        long of(CreditTaxes credit, LineRow line);
    }

    private UUID write(UUID invoice, LocalDate day, Wording why, HowMuch howMuch) {
        return written(invoice, day, why, howMuch)
                .orElseThrow(() -> Refusal.of("credit.nothing").thrown());
    }

    private Optional<UUID> written(UUID invoice, LocalDate day, Wording why, HowMuch howMuch) {
        if (why.en().isBlank() || why.fr().isBlank()) {
            throw Refusal.of("credit.reason-missing").at("why").thrown();
        }
        try (Connection connection = datasource.getConnection()) {
            Waiting corrected = rows.waiting(connection, List.of(invoice), true).get(invoice);
            if (corrected == null) {
                throw Refusal.of("invoice.not-found").thrown();
            }
            CreditTaxes credit = judging.credit(connection, invoice);
            if (credit == null) {
                throw Refusal.of("credit.not-issued").thrown();
            }
            List<DraftLine> lines = new ArrayList<>();
            List<Integer> positions = new ArrayList<>();
            for (LineRow line : corrected.lines()) {
                long minor = howMuch.of(credit, line);
                if (minor > 0) {
                    lines.add(back(line, new Money(minor, corrected.currency()), why));
                    positions.add(line.position());
                }
            }
            if (lines.isEmpty()) {
                return Optional.empty();
            }
            Draft draft = draft(corrected, day, why, lines);
            return Optional.of(drafts.write(List.of(draft), List.of(positions)).getFirst());
        } catch (SQLException cause) {
            throw new IllegalStateException("the credit note could not be written", cause);
        }
    }

    private static Draft draft(Waiting corrected, LocalDate day, Wording why, List<DraftLine> lines) {
        return new Draft(
                DocumentKind.CREDIT,
                corrected.id(),
                corrected.customerId(),
                corrected.homeId(),
                null,
                null,
                null,
                null,
                null,
                corrected.language(),
                corrected.currency(),
                day,
                false,
                corrected.purchaseOrder(),
                0,
                why,
                lines);
    }

    /** A whole line goes back as it was written; a part goes back as one sum. */
    private static DraftLine back(LineRow line, Money net, Wording why) {
        boolean whole = net.minor() == line.netMinor() && line.unitPriceMinor() != null;
        Money nought = Money.zero(net.currency());
        return new DraftLine(
                line.homeId(),
                line.agreementId(),
                line.visitId(),
                null,
                line.day(),
                line.kind(),
                line.itemCode(),
                null,
                Covered.BILLABLE,
                line.work(),
                line.form(),
                line.words(),
                why,
                whole ? line.quantity() : BigDecimal.ONE,
                whole ? line.unit() : "C62",
                whole && line.unitPriceMinor() != null ? new Money(line.unitPriceMinor(), net.currency()) : net,
                whole ? line.discountPercent() : BigDecimal.ZERO,
                whole ? new Money(line.discountMinor(), net.currency()) : nought,
                net);
    }
}
