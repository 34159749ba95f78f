package changeover.web.field;

import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.customers.AccessCodes;
import changeover.contracts.customers.Customer;
import changeover.contracts.customers.Customers;
import changeover.contracts.customers.Hazards;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.HomePart;
import changeover.contracts.customers.HomeParts;
import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.CurrentTenant;
import changeover.scheduling.closeout.DaySheet;
import changeover.scheduling.closeout.StopLines;
import changeover.scheduling.visits.VisitLists;
import changeover.web.session.Frame;
import changeover.web.session.ShutInWords;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;

/** Writes one visit as it is read at the door. */
@ApplicationScoped
class VisitViews {

    /** Who matters first to somebody who stands at the door. */
    private static final List<String> AT_THE_DOOR = List.of("lets_in", "lives", "signs", "pays", "gets_report");

    @Inject
    StopLines stops;

    @Inject
    OwnCatalogue catalogue;

    @Inject
    CurrentTenant current;

    @Inject
    Homes homes;

    @Inject
    HomeParts parts;

    @Inject
    Customers customers;

    @Inject
    Hazards hazards;

    @Inject
    ShutInWords shut;

    @Inject
    AccessCodes codes;

    /** The visit's tasks, machines and what was said, for whoever's day it stands in. */
    StopLines.Lines lines(VisitLists.Row row) {
        UUID technician = Objects.requireNonNullElse(row.technicianId(), current.person());
        return stops.of(row.id(), technician, catalogue.catalogue());
    }

    VisitView of(VisitLists.Row row, Frame frame) {
        StopLines.Lines lines = lines(row);
        Optional<Home> home = homes.get(row.homeId());
        List<VisitView.Line> tasks = tasks(lines, frame.locale());
        return new VisitView(
                row.id(),
                home.map(Home::line).orElse(row.street() + ", " + row.city()),
                row.day() == null ? "" : frame.inWords(row.day()),
                row.starts() == null ? "" : row.starts().toString(),
                row.minutes(),
                frame.today().equals(row.day()),
                row.how() == null ? "" : row.how(),
                new SheetSoFar(lines.said()).last("arrive").isPresent(),
                home.map(found -> found.facts().gettingIn()).orElse(""),
                home.map(Home::toBeRead).orElse(false),
                home.map(Home::facts).filter(facts -> facts.postal() == null).isPresent(),
                new SheetSoFar(lines.said()).each("machine").size(),
                !codes.list(row.homeId()).isEmpty(),
                hazards.of(row.homeId()).stream()
                        .filter(hazard -> hazard.clearedOn().isEmpty())
                        .map(hazard -> new VisitView.Danger(hazard.kind(), hazard.note()))
                        .toList(),
                shut.of(row.homeId(), frame.locale()),
                people(row.homeId(), frame.today()),
                lines.openFindings().stream()
                        .map(finding -> new VisitView.Open(
                                finding.level().code(),
                                finding.equipment() == null ? "" : finding.equipment(),
                                finding.in(frame.locale().getLanguage())))
                        .toList(),
                tasks,
                (int) tasks.stream().filter(task -> !task.outcome().isEmpty()).count(),
                tasks.stream()
                        .filter(task -> task.outcome().isEmpty())
                        .findFirst()
                        .orElse(null));
    }

    /** The checklist in its order, each task with its outcome so far. */
    List<VisitView.Line> tasks(StopLines.Lines lines, Locale locale) {
        var sheet = new SheetSoFar(lines.said());
        List<VisitView.Line> tasks = new ArrayList<>();
        for (DaySheet.TaskLine task : lines.tasks()) {
            Optional<DaySheet.Said> said = sheet.outcome(task.id());
            tasks.add(new VisitView.Line(
                    task.id(),
                    tasks.size() + 1,
                    task.equipment() == null ? "" : task.equipment(),
                    task.wording().in(locale),
                    task.reason().in(locale),
                    task.minutes(),
                    said.map(one -> SheetSoFar.text(one, "outcome")).orElse(""),
                    said.map(one -> SheetSoFar.text(one, "reason")).orElse(""),
                    task.mayDoIt()));
        }
        return tasks;
    }

    private List<VisitView.Who> people(UUID home, LocalDate day) {
        Map<UUID, List<String>> played = new LinkedHashMap<>();
        List<HomePart> inOrder = parts.on(home, day).stream()
                .sorted(Comparator.comparing(
                        part -> AT_THE_DOOR.indexOf(part.part().code())))
                .toList();
        for (HomePart part : inOrder) {
            played.computeIfAbsent(part.customerId(), none -> new ArrayList<>())
                    .add(part.part().code());
        }
        List<VisitView.Who> people = new ArrayList<>();
        List<Customer> known = customers.all(List.copyOf(played.keySet())).stream()
                .sorted(Comparator.comparing(
                        customer -> List.copyOf(played.keySet()).indexOf(customer.id())))
                .toList();
        for (Customer customer : known) {
            String phone =
                    customer.facts().phone() == null ? "" : customer.facts().phone();
            people.add(new VisitView.Who(
                    customer.facts().name(),
                    phone,
                    phone.replaceAll("[^0-9+]", ""),
                    Objects.requireNonNullElse(played.get(customer.id()), List.of())));
        }
        return people;
    }
}
