package changeover.scheduling.stock;

import changeover.contracts.takeover.Brought;
import changeover.contracts.takeover.BroughtFile;
import changeover.contracts.takeover.BroughtList;
import changeover.contracts.takeover.Title;
import changeover.contracts.takeover.WrittenFigure;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.words.Folded;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refused;
import changeover.contracts.words.Wording;
import changeover.scheduling.stock.KnownPart.Amount;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/** What lay on the shelf and in the vans on the day of the take-over, as a file: a row for a place and a part. */
@ApplicationScoped
class CountsList implements BroughtList {

    static final Wording WHY = new Wording("Take-over count", "Inventaire de reprise");

    private static final String PLACE = "place";
    private static final String PART = "part";
    private static final String QUANTITY = "quantity";

    @Inject
    StockPlaces places;

    @Inject
    Parts parts;

    @Inject
    EarlierCounts counts;

    @Inject
    Businesses businesses;

    /** What one row says. */
    private record Counted(int row, StockPlace place, KnownPart part, BigDecimal quantity) {}

    /** Parts by their code, and by their name in either language; a name that two have is the first one's. */
    private record Carried(Map<String, KnownPart> byCode, Map<String, KnownPart> byName) {

        static Carried of(List<KnownPart> parts) {
            var carried = new Carried(new HashMap<>(), new HashMap<>());
            for (KnownPart part : parts) {
                carried.byCode.put(part.code(), part);
                carried.byName.putIfAbsent(Folded.of(part.name().en()), part);
                carried.byName.putIfAbsent(Folded.of(part.name().fr()), part);
            }
            return carried;
        }

        KnownPart part(String said) {
            return Optional.ofNullable(byCode.get(said))
                    .or(() -> Optional.ofNullable(byName.get(Folded.of(said))))
                    .orElseThrow(() -> Refusal.of("brought.part-unknown", Map.of("said", said))
                            .at(PART)
                            .thrown());
        }
    }

    @Override
    public String code() {
        return "counts";
    }

    @Override
    public List<Title> titles() {
        return List.of(Title.needed(PLACE, "lieu"), Title.needed(PART, "pièce"), Title.needed(QUANTITY, "quantité"));
    }

    @Override
    public int turn() {
        return 30;
    }

    @Override
    public Brought bring(BroughtFile file, LocalDate day) {
        var notes = new Brought.Notes();
        Map<UUID, List<Counted>> byPlace = new LinkedHashMap<>();
        Map<String, Integer> seen = new HashMap<>();
        List<StockPlace> known = places.all();
        Carried carried = Carried.of(parts.all());
        for (BroughtFile.Row row : file.rows()) {
            try {
                StockPlace place = place(known, row.cell(PLACE));
                KnownPart part = carried.part(row.cell(PART));
                BigDecimal quantity = quantity(row.cell(QUANTITY));
                Integer before = seen.putIfAbsent(place.id() + " " + part.code(), row.number());
                if (before != null) {
                    throw Refusal.of("brought.twice", Map.of("row", before))
                            .at(PART)
                            .thrown();
                }
                byPlace.computeIfAbsent(place.id(), _ -> new ArrayList<>())
                        .add(new Counted(row.number(), place, part, quantity));
            } catch (Refused refused) {
                notes.fault(row.number(), refused);
            }
        }
        byPlace.forEach((place, counted) -> count(place, counted, day, notes));
        return notes.done();
    }

    private void count(UUID place, List<Counted> counted, LocalDate day, Brought.Notes notes) {
        Map<String, BigDecimal> differences = counts.count(
                day,
                place,
                counted.stream()
                        .map(one -> new Amount(one.part().code(), one.quantity()))
                        .toList(),
                WHY.in(businesses.current().language()));
        for (Counted one : counted) {
            BigDecimal difference = differences.get(one.part().code());
            if (difference != null) {
                Wording name = one.part().name();
                notes.change(
                        one.row(),
                        new Wording(
                                one.place().name() + ", " + name.en(),
                                one.place().name() + ", " + name.fr()),
                        said(one.quantity().subtract(difference)),
                        said(one.quantity()));
            } else {
                notes.same();
            }
        }
    }

    private static Wording said(BigDecimal quantity) {
        String plain = quantity.stripTrailingZeros().toPlainString();
        return new Wording(plain, plain.replace('.', ','));
    }

    private static StockPlace place(List<StockPlace> known, String said) {
        String folded = Folded.of(said);
        return known.stream()
                .filter(place -> Folded.of(place.name()).equals(folded))
                .findFirst()
                .orElseThrow(() -> Refusal.of("brought.place-unknown", Map.of("said", said))
                        .at(PLACE)
                        .thrown());
    }

    private static BigDecimal quantity(String said) {
        return WrittenFigure.read(said)
                .filter(quantity -> quantity.compareTo(Stock.MOST) <= 0)
                .orElseThrow(() -> Refusal.of("brought.figure", Map.of("said", said))
                        .at(QUANTITY)
                        .thrown());
    }
}
