package changeover.web.walls;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.web.walls.ALivedInShop.Lived;
import changeover.web.walls.Caller.Answer;
import changeover.web.walls.Caller.Sent;
import changeover.web.walls.Caller.Who;
import changeover.web.walls.Routes.Route;
import com.fasterxml.jackson.databind.node.TextNode;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * An id of another business inside a form or a document of our own: an agreement for their home, a visit for their
 * technician, a payment on their invoice. It is answered like an id that does not exist, and never taken.
 */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class EveryBodyKeepsItsWallsTest {

    private static final Pattern IDS = Pattern.compile("\\.(?:id|idOrNone)\\(\"([^\"]+)\"");
    private static final Pattern ID = Pattern.compile("[0-9a-f]{8}-[0-9a-f-]{27}");

    /** How many rows one address is tried with: a closed visit asks nothing any more. */
    private static final int MOST_ROWS = 6;

    /** Ids that a form makes for itself, so that the same press twice is one deed. */
    private static final Set<String> MADE_BY_THE_FORM = Set.of("made", "operation");

    @Inject
    ALivedInShop shops;

    @Inject
    OwnersEyes eyes;

    @Inject
    Routes routes;

    @Inject
    Reached reached;

    @Inject
    Named named;

    private final List<String> wrong = new ArrayList<>();
    private final Set<String> inDocuments = new TreeSet<>();
    private int trials;

    @Test
    void no_form_takes_an_id_of_another_business() throws IOException {
        Lived ours = shops.ours();
        Lived theirs = shops.theirs();
        Map<String, String> before = eyes.checksum(theirs.shop().tenant());
        Set<String> tried = new TreeSet<>();
        Who owner = Who.member("owner", ours.shop().owner());
        Who technician = Who.member("technician", ours.shop().technician());
        for (Who who : List.of(owner, technician)) {
            List<String> starts = who == owner
                    ? starts(
                            ours,
                            eyes.values("plan.id", ours.shop().tenant()).getFirst(),
                            eyes.values("follow_up.id", ours.shop().tenant()).getFirst())
                    : inTheField(ours);
            for (Form form : Walk.from(who, ours.shop().slug(), starts).forms()) {
                for (Form.Field field : form.fields()) {
                    column(field, ours).ifPresent(column -> {
                        tried.add(field.name());
                        form(who, form, field, column, theirs);
                    });
                }
            }
        }
        for (String name : asked()) {
            if (!tried.contains(name) && !MADE_BY_THE_FORM.contains(name)) {
                wrong.add("no form was found in which " + name + " names a row; let walls/ALivedInShop have one");
            }
        }
        System.out.println("walls: ids in forms: trials=" + trials + " " + tried);
        assertEquals(List.of(), wrong);
        assertEquals(before, eyes.checksum(theirs.shop().tenant()));
    }

    /** The day's stops, and the photos of what was found. */
    private List<String> inTheField(Lived ours) {
        var starts = new ArrayList<>(List.of(ours.shop().at("field")));
        eyes.texts("""
                        select 'field/visits/' || visit_id || '/tasks/' || (body ->> 'task') || '/photos' from operation
                         where tenant_id = ? and kind = 'finding'""", ours.shop().tenant())
                .forEach(path -> starts.add(ours.shop().at(path)));
        return starts;
    }

    private static List<String> starts(Lived ours, String plan, String followUp) {
        return List.of(
                        "today",
                        "shop",
                        "homes",
                        "money",
                        "season",
                        "agreements",
                        "plans",
                        "parts",
                        "buildings",
                        "homes/new",
                        "calls/new?home=" + ours.home(),
                        "homes/" + ours.home() + "/people?who=a&customer=" + ours.customer(),
                        "homes/" + ours.home() + "/estimates/new?followUp=" + followUp,
                        "homes/" + ours.home() + "/offer?from=" + LocalDate.now() + "&plan=" + plan,
                        "customers/" + ours.customer(),
                        "money/payments/new?customer=" + ours.customer())
                .stream()
                .map(ours.shop()::at)
                .toList();
    }

    /** What the field's ids name; empty where it holds none of ours. */
    private Optional<String> column(Form.Field field, Lived ours) {
        return java.util.stream.Stream.concat(field.options().stream(), field.values().stream())
                .filter(value -> ID.matcher(value).matches())
                .findFirst()
                .flatMap(id -> eyes.whereIs(id, ours.shop().tenant()));
    }

    private void form(Who who, Form form, Form.Field field, String column, Lived theirs) {
        String real = eyes.values(column, theirs.shop().tenant()).getFirst();
        Map<String, List<String>> filled = Filled.of(form);
        Answer there = Caller.ask(who, form.method(), form.action(), form.with(filled, field.name(), real));
        Answer nothing = Caller.ask(
                who,
                form.method(),
                form.action(),
                form.with(filled, field.name(), UUID.randomUUID().toString()));
        same(form.shape() + " " + field.name(), there, nothing);
    }

    /** Every id that the source of a page asks for. */
    private static Set<String> asked() throws IOException {
        try (var files = Files.walk(Path.of("src/main/java/changeover/web"))) {
            return files.filter(file -> !file.toString().contains("/api/")
                            && file.toString().endsWith(".java"))
                    .flatMap(file -> IDS.matcher(read(file)).results())
                    .map(found -> found.group(1))
                    .collect(Collectors.toCollection(TreeSet::new));
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException cause) {
            throw new java.io.UncheckedIOException(cause);
        }
    }

    @Test
    void no_document_takes_an_id_of_another_business() {
        Lived ours = shops.theirs();
        Lived theirs = shops.ours();
        Map<String, String> before = eyes.checksum(theirs.shop().tenant());
        Who owner = Who.member("owner", ours.shop().owner());
        for (Route route : routes.all()) {
            if (route.isApi() && !route.method().equals("GET") && route.takes().isEmpty()) {
                document(owner, route, ours, theirs);
            }
        }
        System.out.println("walls: ids in documents: trials=" + trials + " " + inDocuments);
        assertEquals(List.of(), wrong);
        assertEquals(before, eyes.checksum(theirs.shop().tenant()));
        assertTrue(inDocuments.size() >= 18, "trials: " + trials + " " + inDocuments);
    }

    private void document(Who owner, Route route, Lived ours, Lived theirs) {
        UUID tenant = ours.shop().tenant();
        reached.paths(ours, route).stream()
                .limit(MOST_ROWS)
                .forEach(path -> Learned.each(
                                owner,
                                route.method(),
                                path,
                                name -> named.of(name, tenant).orElse(""))
                        .forEach(learned -> document(owner, route, path, learned, theirs)));
    }

    private void document(Who owner, Route route, String path, Learned learned, Lived theirs) {
        learned.kinds().forEach((member, code) -> {
            String name = member.substring(member.lastIndexOf('.') + 1);
            String real = named.of(name, theirs.shop().tenant()).orElse("");
            boolean isId = code.equals("typed.id") || (code.isEmpty() && !real.isEmpty());
            if (isId && real.isEmpty() && !Named.MADE_BY_THE_SENDER.contains(name)) {
                wrong.add(route + " has an id " + member + " without a row to try it with; name it in walls/Named");
            } else if (isId && !real.isEmpty()) {
                inDocuments.add(route.path().replaceFirst(".*\\{slug}/", "") + " " + member);
                String none = UUID.randomUUID().toString();
                same(
                        route + " " + member,
                        Caller.ask(owner, route.method(), path, Sent.json(learned.with(member, new TextNode(real)))),
                        Caller.ask(owner, route.method(), path, Sent.json(learned.with(member, new TextNode(none)))));
            }
        });
    }

    private void same(String at, Answer there, Answer nothing) {
        trials++;
        if (!there.blank().equals(nothing.blank())) {
            wrong.add(at + " tells them apart: " + brief(there) + " | " + brief(nothing));
        } else if (there.status() >= 500) {
            wrong.add(at + " breaks: " + brief(there));
        }
    }

    private static String brief(Answer answer) {
        String line = answer.blank().replaceAll("\\s+", " ");
        return line.length() > 200 ? line.substring(0, 200) : line;
    }
}
