package changeover.billing.costs;

import changeover.billing.pricing.CostRates;
import changeover.billing.pricing.ItemKind;
import changeover.billing.pricing.Overhead;
import changeover.billing.pricing.PlanYear;
import changeover.billing.pricing.PriceBook;
import changeover.billing.pricing.PriceEntry;
import changeover.billing.pricing.Trip;
import changeover.contracts.money.Money;
import changeover.scheduling.dayplan.routes.AsTheCrowFlies;
import changeover.scheduling.dayplan.routes.Travel;
import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.Parts;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What an hour, a part and a trip cost the business on any day: the hour, the parts and an undriven trip by the price book's cost,
 * the rest by its own figures, and for days before the first of those by the first.
 */
public final class CostBook {

    /** A place on the map as it stands on a card, in degrees. */
    public record Spot(BigDecimal latitude, BigDecimal longitude) {

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
    private final Map<Item, Optional<Money>> known = new HashMap<>();
    private final Map<Way, Trip> driven = new HashMap<>();

    /** @param shop where the business stands, for trips that no cost of its own lets begin elsewhere */
    CostBook(
            PriceBook prices,
            List<RunningCost> running,
            List<KnownPart> parts,
            Currency currency,
            @Nullable Spot shop) {
        this.prices = prices;
        this.running = List.copyOf(running);
        this.parts = List.copyOf(parts);
        this.currency = currency;
        this.shop = shop;
    }

    public Currency currency() {
        return currency;
    }

    /** @param home where the trip goes, null where nobody knows */
    public CostRates rates(LocalDate day, @Nullable Spot home) {
        @Nullable RunningCost own = RunningCost.on(running, day);
        RunningCost.@Nullable Facts facts = own == null ? null : own.facts();
        @Nullable Overhead overhead = facts == null ? null : facts.overhead();
        @Nullable Spot begins = facts == null ? null : Spot.of(facts.latitude(), facts.longitude());
        return new CostRates(
                cost(ItemKind.LABOUR, PriceBook.HOUR, day).orElse(null),
                facts == null ? null : facts.setUpMinutes(),
                trip(begins == null ? shop : begins, home, day),
                overhead);
    }

    private Trip trip(@Nullable Spot from, @Nullable Spot home, LocalDate day) {
        if (from != null && home != null) {
            return driven.computeIfAbsent(
                    new Way(from, home),
                    way -> Trip.between(way.from().place(), way.to().place(), AsTheCrowFlies.USUAL));
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
