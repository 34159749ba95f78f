package changeover.scheduling.supply;

import changeover.contracts.calendar.Term;
import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.Cadence;
import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.Due;
import changeover.contracts.catalogue.History;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.catalogue.PartKind;
import changeover.contracts.catalogue.PartSize;
import changeover.contracts.catalogue.Task;
import changeover.scheduling.households.FilterSlots;
import changeover.scheduling.households.SlotRhythm;
import changeover.scheduling.households.SlotRhythms;
import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.Parts;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The year's need of the homes under a plan today, if each keeps its plan for the year: what its tasks always take, what they
 * took when they were done, and filters as each household fills them.
 */
@ApplicationScoped
public class Supply {

    @Inject
    OwnCatalogue trade;

    @Inject
    SupplyRows rows;

    @Inject
    Parts parts;

    @Inject
    FilterSlots slots;

    @Inject
    SlotRhythms rhythms;

    private record Sized(String kind, String size) {}

    private static final class Heap {
        private final List<Use> uses = new ArrayList<>();
        private final Set<UUID> homes = new HashSet<>();
    }

    public YearsSupply of(LocalDate day) {
        OwnCatalogue.Own own = trade.read();
        Map<String, Task> taking = own.catalogue().tasks().stream()
                .filter(task -> !task.parts().isEmpty())
                .collect(Collectors.toMap(Task::code, Function.identity(), (one, _) -> one));
        var year = new Window(day, day.plusYears(1));
        List<SupplyRows.Promised> promised = rows.promised(taking.keySet(), day);
        SupplyRows.Shares shares = rows.shares(taking.keySet());
        Map<UUID, SlotRhythm> filters = filters(promised);
        Set<UUID> byHousehold = promised.stream()
                .filter(one -> isOfItsSlot(one, filters.get(one.unit())))
                .map(SupplyRows.Promised::unit)
                .collect(Collectors.toUnmodifiableSet());
        Map<Sized, Heap> heaps = new TreeMap<>(Comparator.comparing(Sized::kind).thenComparing(Sized::size));
        List<KnownPart> carried = parts.all();
        Set<YearsSupply.Unknown> unknown = new LinkedHashSet<>();
        for (SupplyRows.Promised one : promised) {
            Task task = taking.get(one.task());
            if (task == null) {
                continue;
            }
            for (Task.PartUse use : task.parts()) {
                own.catalogue().findPart(use.part()).ifPresent(kind -> {
                    SlotRhythm filter = byHousehold.contains(one.unit()) ? filters.get(one.unit()) : null;
                    List<Use> uses = uses(one, task, use, kind, shares, filter, year, own);
                    if (uses.isEmpty() && !use.eachTime() && !shares.done().containsKey(task.code())) {
                        unknown.add(new YearsSupply.Unknown(task.wording(), kind.wording()));
                    }
                    if (!uses.isEmpty()) {
                        Heap heap = heaps.computeIfAbsent(
                                sized(kind, one.fits(), own.catalogue(), carried), _ -> new Heap());
                        heap.uses.addAll(uses);
                        heap.homes.add(one.home());
                    }
                });
            }
        }
        return new YearsSupply(year, lines(heaps, year, own, carried), List.copyOf(unknown));
    }

    private static boolean isOfItsSlot(SupplyRows.Promised one, @Nullable SlotRhythm filter) {
        return filter != null && one.task().equals(filter.slot().taskCode());
    }

    /** Reckoned for those alone whose list is about a filter. */
    private Map<UUID, SlotRhythm> filters(List<SupplyRows.Promised> promised) {
        Set<UUID> wanted = promised.stream().map(SupplyRows.Promised::unit).collect(Collectors.toUnmodifiableSet());
        return rhythms
                .together(slots.all().stream()
                        .filter(slot -> wanted.contains(slot.id()))
                        .toList())
                .stream()
                .collect(Collectors.toMap(one -> one.slot().id(), Function.identity()));
    }

    private static List<Use> uses(
            SupplyRows.Promised one,
            Task task,
            Task.PartUse use,
            PartKind kind,
            SupplyRows.Shares shares,
            @Nullable SlotRhythm filter,
            Window year,
            OwnCatalogue.Own own) {
        long thousandths = use.quantity().multiply(BigDecimal.valueOf(1000)).longValue();
        if (filter != null && isOfItsSlot(one, filter)) {
            Cadence followed = filter.followed(one.cadence());
            LocalDate last = filter.seen()
                    .lastChange()
                    .map(told -> told.look().day())
                    .orElse(year.from().minusDays(filter.learned().limits().capDays() / 2));
            Optional<Use> rounds = FilterLives.rounds(filter, followed, last, thousandths);
            if (rounds.isPresent()) {
                return List.of(rounds.get());
            }
        }
        long each = thousandths * own.catalogue().countOf(kind.code(), one.fits());
        Long done = shares.done().get(task.code());
        if (!use.eachTime() && (done == null || filter != null)) {
            return List.of();
        }
        long took =
                use.eachTime() ? 0 : shares.took().getOrDefault(new SupplyRows.TaskPart(task.code(), kind.code()), 0L);
        return one
                .cadence()
                .duesIn(new Term(year.from(), year.until()), new History(one.last(), List.of()), own.seasons())
                .stream()
                .filter(due -> due.act() != Due.Act.CHECK && due.window().from().isBefore(year.until()))
                .map(due -> use.eachTime()
                        ? new Use.Sure(due.window(), each)
                        : new Use.Perhaps(due.window(), thousandths, took, done == null ? 1 : done))
                .map(Use.class::cast)
                .toList();
    }

    /** What one part fits is counted together: it is bought against what lies there of it once. */
    private static Sized sized(PartKind kind, Map<String, String> fits, Catalogue catalogue, List<KnownPart> carried) {
        Optional<String> asked = catalogue.sizeOf(kind, fits).map(PartSize::words);
        Optional<KnownPart> part = Parts.fitting(carried, kind.code(), asked.orElse(null));
        return new Sized(
                kind.code(),
                part.flatMap(KnownPart::which)
                        .map(PartSize::words)
                        .or(() -> asked)
                        .orElse(""));
    }

    private static List<YearsSupply.Line> lines(
            Map<Sized, Heap> heaps, Window year, OwnCatalogue.Own own, List<KnownPart> carried) {
        List<YearsSupply.Line> lines = new ArrayList<>();
        heaps.forEach((sized, heap) -> {
            PartKind kind = own.catalogue().findPart(sized.kind()).orElseThrow();
            PartNeed need = PartNeed.of(heap.uses, year, sized.hashCode());
            if (!need.year().isNothing()) {
                lines.add(new YearsSupply.Line(
                        kind.code(),
                        kind.wording(),
                        kind.unit(),
                        sized.size().isEmpty() ? null : sized.size(),
                        Parts.fitting(carried, kind.code(), sized.size().isEmpty() ? null : sized.size())
                                .map(KnownPart::code)
                                .orElse(null),
                        heap.homes.size(),
                        need));
            }
        });
        return lines;
    }
}
