package changeover.web.office;

import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.customers.Customer;
import changeover.contracts.customers.Customers;
import changeover.contracts.tenants.Business;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.web.office.RecordChanges.Change;
import changeover.web.session.Frame;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.ws.rs.NotFoundException;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Puts what was changed into words; the names of customers and people are read once a page. */
@ApplicationScoped
class ChangesViews {

    @Inject
    RecordChanges changes;

    @Inject
    OwnCatalogue catalogue;

    @Inject
    Businesses businesses;

    @Inject
    People people;

    @Inject
    Customers customers;

    /** A record with its history; unknown records are not found. */
    ChangesView record(Recorded kind, Object id, String back, int page, Frame frame) {
        var entered = changes.entered(kind, id, frame.locale()).orElseThrow(NotFoundException::new);
        RecordChanges.Read read = changes.of(kind, id, page, frame.locale());
        Map<String, String> names = names(read.changes());
        ChangeInWords words = words(names, frame);
        String name = name(kind, entered.thing(), words);
        return view(name, back, read, words, page, frame)
                .enteredBy(person(entered.person(), names), when(entered.at(), words));
    }

    /** A number, a kind or an amount alone names nothing, so it stands behind what it is: the agreement 2. */
    private static String name(Recorded kind, String thing, ChangeInWords words) {
        String said = words.value(kind.table(), bare(kind.label()), thing, "");
        return switch (kind) {
            case AGREEMENTS, PAYMENTS -> words.table(kind.table()) + " " + said;
            case INVOICES -> words.table(kind.table()) + " (" + said + ")";
            default -> said.isEmpty() ? words.table(kind.table()) : said;
        };
    }

    /** A whole list of the business with its history. */
    ChangesView list(Recorded kind, String back, int page, Frame frame) {
        RecordChanges.Read read = changes.of(kind, null, page, frame.locale());
        return view("", back, read, words(names(read.changes()), frame), page, frame);
    }

    private ChangesView view(
            String name, String back, RecordChanges.Read read, ChangeInWords words, int page, Frame frame) {
        return new ChangesView(
                name,
                back,
                "",
                "",
                read.changes().stream().map(change -> line(change, words)).toList(),
                page > 1 ? frame.path() + "?page=" + (page - 1) : "",
                read.more() ? frame.path() + "?page=" + (page + 1) : "");
    }

    private ChangesView.Line line(Change change, ChangeInWords words) {
        String label = Stream.of(Recorded.values())
                .flatMap(kind -> Stream.concat(
                        Stream.of(new Recorded.Hanging(kind.table(), "", kind.label(), true)), kind.parts().stream()))
                .filter(part -> part.table().equals(change.table()))
                .map(part -> bare(part.label()))
                .findFirst()
                .orElse("");
        String thing = words.value(change.table(), label, change.thing(), "");
        return new ChangesView.Line(
                when(change.at(), words),
                words.table(change.table()) + (thing.isEmpty() ? "" : " " + thing),
                change.act(),
                change.field().isEmpty() ? "" : words.field(change.table(), change.field()),
                words.value(change.table(), change.field(), change.before(), change.form()),
                words.value(change.table(), change.field(), change.after(), change.form()),
                person(change.person(), words.people()));
    }

    private Map<String, String> names(List<Change> read) {
        var names = new HashMap<String, String>();
        List<UUID> asked = read.stream()
                .filter(change -> ChangeInWords.isSomebody(change.field()))
                .flatMap(change -> Stream.of(change.before(), change.after()))
                .filter(id -> !id.isEmpty())
                .distinct()
                .map(UUID::fromString)
                .toList();
        if (!asked.isEmpty()) {
            for (Customer customer : customers.all(asked)) {
                names.put(customer.id().toString(), customer.facts().name());
            }
        }
        names.putAll(people.all().stream()
                .collect(Collectors.toMap(member -> member.personId().toString(), Membership::name, (one, _) -> one)));
        return names;
    }

    private ChangeInWords words(Map<String, String> names, Frame frame) {
        OwnCatalogue.Own own = catalogue.read();
        Business business = businesses.current();
        return new ChangeInWords(
                frame.locale(),
                business.zone(),
                business.currency(),
                own.catalogue(),
                own.seasons().climate(),
                names);
    }

    private static String when(Instant at, ChangeInWords words) {
        return words.instant(at.atZone(words.zone()));
    }

    private static String person(@Nullable UUID person, Map<String, String> names) {
        return person == null ? "" : names.getOrDefault(person.toString(), "");
    }

    private static String bare(String label) {
        return label.replace("*", "en");
    }
}
