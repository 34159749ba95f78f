package changeover.billing.costs;

import changeover.billing.pricing.CostRates;
import changeover.billing.pricing.ItemKind;
import changeover.billing.pricing.Overhead;
import changeover.billing.pricing.PlanYear;
import changeover.billing.pricing.PriceBook;
import changeover.billing.pricing.PriceEntry;
import changeover.billing.pricing.Trip;
import changeover.contracts.money.Money;
import changeover.scheduling.dayplan.routes.Travel;
import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.Parts;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.Currency;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What an hour, a part and a trip cost the business on any day: the hour, the parts and an undriven trip by the price book's cost,
 * the rest by its own figures, and for days before the first of those by the first. A trip is driven by the roads that the day is
 * planned with: by a table of roads where one is at hand and has answered, else as the crow flies.
 */
public final class CostBook {

    private static final int AT_ONCE = 49;

    /** A place on the map as it stands on a card, in degrees. */
    public record Spot(BigDecimal latitude, BigDecimal longitude) {

        private static final Comparator<Spot> ORDER =
                Comparator.comparing(Spot::latitude).thenComparing(Spot::longitude);

        static @Nullable Spot of(@Nullable BigDecimal latitude, @Nullable BigDecimal longitude) {
            return latitude == null || longitude == null ? null : new Spot(latitude, longitude);
        }

        private Travel.Place place() {
            return new Travel.Place(latitude.doubleValue(), longitude.doubleValue());
        }
    }

    private record Item(ItemKind kind, String code, LocalDate day) {}

    private record Way(Spot from, Spot to) {}

    private final PriceBook prices;
    private final List<RunningCost> running;
    private final List<KnownPart> parts;
    private final Currency currency;
    private final @Nullable Spot shop;
    private final Travel roads;
    private final Map<Item, Optional<Money>> known = new HashMap<>();
    private final Map<Way, Trip> driven = new HashMap<>();

    /** @param shop where the business stands, for trips that no cost of its own lets begin elsewhere */
    CostBook(
            PriceBook prices,
            List<RunningCost> running,
            List<KnownPart> parts,
            Currency currency,
            @Nullable Spot shop,
            Travel roads) {
        this.prices = prices;
        this.running = List.copyOf(running);
        this.parts = List.copyOf(parts);
        this.currency = currency;
        this.shop = shop;
        this.roads = roads;
    }

    /** The roads to all these homes from wherever trips ever began, in as few questions as a table of roads answers easily. */
    void know(Collection<Spot> homes) {
        List<Spot> all = homes.stream().distinct().sorted(Spot.ORDER).toList();
        Set<Spot> begins = running.stream()
                .flatMap(one -> Optional.ofNullable(begins(one.facts())).stream())
                .collect(Collectors.toCollection(LinkedHashSet::new));
        if (running.isEmpty() && shop != null) {
            begins.add(shop);
        }
        for (Spot from : begins) {
            for (int at = 0; at < all.size(); at += AT_ONCE) {
                List<Spot> some = all.subList(at, Math.min(all.size(), at + AT_ONCE));
                List<Trip> trips = Trip.between(
                        from.place(), some.stream().map(Spot::place).toList(), roads);
                for (int home = 0; home < some.size(); home++) {
                    driven.put(new Way(from, some.get(home)), trips.get(home));
                }
            }
        }
    }

    private @Nullable Spot begins(RunningCost.@Nullable Facts facts) {
        @Nullable Spot own = facts == null ? null : Spot.of(facts.latitude(), facts.longitude());
        return own == null ? shop : own;
    }

    public Currency currency() {
        return currency;
    }

    /** @param home where the trip goes, null where nobody knows */
    public CostRates rates(LocalDate day, @Nullable Spot home) {
        @Nullable RunningCost own = RunningCost.on(running, day);
        RunningCost.@Nullable Facts facts = own == null ? null : own.facts();
        @Nullable Overhead overhead = facts == null ? null : facts.overhead();
        return new CostRates(
                cost(ItemKind.LABOUR, PriceBook.HOUR, day).orElse(null),
                facts == null ? null : facts.setUpMinutes(),
                trip(begins(facts), home, day),
                overhead);
    }

    private Trip trip(@Nullable Spot from, @Nullable Spot home, LocalDate day) {
        if (from != null && home != null) {
            return driven.computeIfAbsent(
                    new Way(from, home),
                    way -> Trip.between(way.from().place(), way.to().place(), roads));
        }
        return cost(ItemKind.TRAVEL, PriceBook.VISIT, day)
                .<Trip>map(Trip.Priced::new)
                .orElseGet(Trip.Unknown::new);
    }

    /** The part of the kind that fits; where the card says no size, the one that costs most of its kind. */
    public Optional<Money> part(PlanYear.Part part, LocalDate day) {
        if (part.size() != null) {
            Optional<Money> fitting =
                    Parts.fitting(parts, part.kind(), part.size()).flatMap(one -> part(one.code(), day));
            return fitting.isPresent() ? fitting : part(part.kind(), day);
        }
        Optional<Money> most = parts.stream()
                .filter(one -> part.kind().equals(one.kind()))
                .flatMap(one -> part(one.code(), day).stream())
                .max(Money::compareTo);
        return most.isPresent() ? most : part(part.kind(), day);
    }

    /** One of the part, by its code. */
    public Optional<Money> part(String code, LocalDate day) {
        return cost(ItemKind.PART, code, day);
    }

    private Optional<Money> cost(ItemKind kind, String code, LocalDate day) {
        return known.computeIfAbsent(
                new Item(kind, code, day), item -> prices.on(kind, code, day).map(PriceEntry::cost));
    }
}
