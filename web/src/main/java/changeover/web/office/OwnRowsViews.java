package changeover.web.office;

import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.Interval;
import changeover.contracts.catalogue.Kind;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.catalogue.OwnKinds;
import changeover.contracts.catalogue.OwnTasks;
import changeover.contracts.catalogue.Task;
import changeover.contracts.customers.AllEquipment;
import changeover.contracts.customers.Equipment;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.web.session.Frame;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads a business's own rows over the catalogue; machines and homes by one statement each. */
@ApplicationScoped
class OwnRowsViews {

    @Inject
    OwnCatalogue catalogue;

    @Inject
    OwnTasks tasks;

    @Inject
    OwnKinds kinds;

    @Inject
    AllEquipment equipment;

    @Inject
    Homes homes;

    OwnRowsView of(Frame frame) {
        Locale locale = frame.locale();
        OwnCatalogue.Own own = catalogue.read();
        return new OwnRowsView(
                rows(own, locale),
                own.catalogue().tasks().stream()
                        .map(task -> new OwnRowsView.Choice(task.code(), wording(task, own.catalogue(), locale)))
                        .sorted(Comparator.comparing(OwnRowsView.Choice::words))
                        .toList(),
                own.seasons().climate().seasons().stream()
                        .map(season -> new OwnRowsView.Choice(season.code(), season.name(locale)))
                        .toList(),
                Stream.concat(
                                tasks.all().stream()
                                        .map(one -> new OwnRowsView.Added(
                                                true,
                                                one.body().code(),
                                                one.body().wording().in(locale))),
                                kinds.all().stream()
                                        .map(one -> new OwnRowsView.Added(
                                                false,
                                                one.body().code(),
                                                one.body().wording().in(locale))))
                        .toList());
    }

    /** A task is told from others of the same words by the kind of machine that it is for. */
    private static String wording(Task task, Catalogue trade, Locale locale) {
        return task.kinds().stream()
                        .flatMap(kind -> trade.findKind(kind).stream())
                        .map((Kind kind) -> kind.wording().in(locale))
                        .collect(Collectors.joining(", "))
                + " – " + task.wording().in(locale);
    }

    private List<OwnRowsView.Row> rows(OwnCatalogue.Own own, Locale locale) {
        List<UUID> ids = own.intervals().stream()
                .map(Interval::equipmentId)
                .filter(Objects::nonNull)
                .toList();
        Map<UUID, Equipment> machines =
                equipment.all(ids).stream().collect(Collectors.toMap(Equipment::id, Function.identity()));
        Map<UUID, String> lines = homes
                .all(machines.values().stream()
                        .flatMap(machine -> machine.homeId().stream())
                        .distinct()
                        .toList())
                .stream()
                .collect(Collectors.toMap(Home::id, Home::line));
        return own.intervals().stream()
                .map(interval -> row(interval, own, machines, lines, locale))
                .sorted(Comparator.comparing(OwnRowsView.Row::task).thenComparing(OwnRowsView.Row::whose))
                .toList();
    }

    private static OwnRowsView.Row row(
            Interval interval,
            OwnCatalogue.Own own,
            Map<UUID, Equipment> machines,
            Map<UUID, String> lines,
            Locale locale) {
        String task = own.catalogue()
                .findTask(interval.taskCode())
                .map(known -> known.wording().in(locale))
                .orElse(interval.taskCode());
        String often = interval.cadence().sentence(own.seasons().climate()).in(locale);
        UUID id = interval.equipmentId();
        Equipment machine = id == null ? null : machines.get(id);
        if (id == null || machine == null) {
            return new OwnRowsView.Row(
                    interval.taskCode(), task, id == null ? "" : id.toString(), "", "", often, interval.basis());
        }
        String place = machine.homeId()
                .map(home -> "homes/" + home)
                .orElseGet(() -> "buildings/" + machine.buildingId().orElseThrow());
        String where = machine.homeId().map(lines::get).map(line -> ", " + line).orElse("");
        return new OwnRowsView.Row(
                interval.taskCode(),
                task,
                id.toString(),
                machine.name() + where,
                place + "/machines/" + id,
                often,
                interval.basis());
    }
}
