package changeover.billing.invoices;

import changeover.billing.tax.DocumentTaxes;
import changeover.billing.tax.Tax;
import changeover.billing.tax.TaxCategory;
import changeover.billing.tax.TaxLine;
import changeover.billing.tax.TaxTable;
import changeover.billing.tax.Taxable;
import changeover.contracts.money.Money;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Wording;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A draft may be issued once its day has come, all its lines have a price, its place has a tax, and the business has the
 * registration numbers that the taxes ask for, or is a small supplier.
 */
record Assessment(Seller seller, TaxTable table, LocalDate day) {

    /** Why the draft may not be issued on the day; empty when it may, as far as the draft alone decides. */
    Optional<Refusal> refusal(Waiting draft) {
        if (draft.label() != null) {
            return Optional.of(Refusal.of("invoice.already-issued", Map.of("label", draft.label())));
        }
        if (draft.discarded()) {
            return Optional.of(Refusal.of("invoice.discarded"));
        }
        if (draft.awaitsFirstVisit()) {
            return Optional.of(Refusal.of("invoice.awaits-first-visit"));
        }
        if (day.isBefore(draft.mayIssueFrom())) {
            return Optional.of(Refusal.of("invoice.too-early", Map.of("day", draft.mayIssueFrom())));
        }
        if (draft.lines().isEmpty()) {
            return Optional.of(Refusal.of("invoice.no-lines"));
        }
        return draft.lines().stream()
                .filter(LineRow::waitsForPrice)
                .findFirst()
                .map(line -> Refusal.of("invoice.price-missing", Map.of("item", line.words())));
    }

    /** The taxes by the places of the work, as rows to freeze, or why there can be none. */
    Taxes taxes(Waiting draft, Map<UUID, Place> places, LocalDate taxDay) {
        List<Taxable> taxables = new ArrayList<>();
        for (LineRow line : draft.lines()) {
            Place place = line.homeId() == null ? null : places.get(line.homeId());
            if (place == null) {
                return new Taxes(List.of(), Refusal.of("invoice.no-place"));
            }
            taxables.add(new Taxable(
                    line.position(),
                    place.taxRegion(),
                    place.property(),
                    line.work(),
                    line.form(),
                    new Money(line.netMinor(), draft.currency())));
        }
        return switch (DocumentTaxes.of(taxables, taxDay, table, seller.smallSupplier())) {
            case DocumentTaxes.Refused refused -> new Taxes(List.of(), refused.refusal());
            case DocumentTaxes.Computed computed -> printed(draft.id(), computed.lines());
        };
    }

    /** @param unconfirmed why they may be shown and not issued: a rate from memory that no owner has confirmed; null if none */
    record Taxes(
            List<PrintedTax> rows,
            @Nullable Refusal refusal,
            @Nullable Refusal unconfirmed) {

        Taxes(List<PrintedTax> rows, @Nullable Refusal refusal) {
            this(rows, refusal, null);
        }
    }

    private Taxes printed(UUID invoice, List<TaxLine> lines) {
        List<PrintedTax> rows = new ArrayList<>();
        for (TaxLine line : lines) {
            String registration = registration(line);
            if (registration == null && Tax.isUnderANumber(line.tax().code())) {
                return new Taxes(
                        List.of(),
                        Refusal.of(
                                "invoice.registration-missing",
                                Map.of("tax", line.tax().label())));
            }
            rows.add(new PrintedTax(
                    invoice,
                    rows.size() + 1,
                    line.tax().code(),
                    line.tax().label(),
                    line.tax().category(),
                    line.tax().percent(),
                    line.base().minor(),
                    line.amount().minor(),
                    line.tax().region(),
                    registration,
                    line.tax().source(),
                    exemption(line),
                    line.lines()));
        }
        return new Taxes(rows, null, fromMemory(lines));
    }

    /** What is not charged says why, in the tax's own words; where they were read is the owner's to know. */
    private static @Nullable Wording exemption(TaxLine line) {
        Tax tax = line.tax();
        boolean charged =
                TaxCategory.of(tax.category()).map(TaxCategory::charges).orElse(true);
        return charged || tax.category().equals("Z") ? null : tax.label();
    }

    private static @Nullable Refusal fromMemory(List<TaxLine> lines) {
        return lines.stream()
                .map(TaxLine::tax)
                .filter(tax -> !tax.read())
                .findFirst()
                .map(tax -> Refusal.of("tax.from-memory", Map.of("tax", tax.label(), "region", tax.region())))
                .orElse(null);
    }

    private @Nullable String registration(TaxLine line) {
        return switch (line.tax().code()) {
            case "gst", "hst" -> seller.gstNumber();
            case "qst" -> seller.qstNumber();
            default -> line.tax().registration();
        };
    }

    /** Who pays; a customer without an address of their own gets the document at the work's. */
    static Buyer buyer(Waiting draft, List<WorkPlace> works) {
        Buyer buyer = draft.buyer();
        if (!buyer.street().isEmpty() || works.isEmpty()) {
            return buyer;
        }
        WorkPlace work = works.getFirst();
        return new Buyer(
                buyer.name(),
                work.street(),
                work.city(),
                work.region(),
                work.postal(),
                work.country(),
                buyer.taxNumber(),
                buyer.email());
    }

    static List<WorkPlace> works(Waiting draft, Map<UUID, Place> places) {
        Map<UUID, WorkPlace> works = new LinkedHashMap<>();
        for (LineRow line : draft.lines()) {
            Place place = line.homeId() == null ? null : places.get(line.homeId());
            if (place != null) {
                works.putIfAbsent(place.work().homeId(), place.work());
            }
        }
        return List.copyOf(works.values());
    }
}
