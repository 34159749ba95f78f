package changeover.contracts.catalogue;

import com.fasterxml.jackson.core.type.TypeReference;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * All kinds of equipment, tasks, parts, cautions and finding sentences that a business knows: those shipped in the jar,
 * and over them its own.
 */
public final class Catalogue {

    private static final Catalogue SHIPPED = new Catalogue(
            byCode(CatalogueJson.resource("kinds.json", new TypeReference<List<Kind>>() {}), Kind::code),
            byCode(CatalogueJson.resource("tasks.json", new TypeReference<List<Task>>() {}), Task::code),
            byCode(CatalogueJson.resource("parts.json", new TypeReference<List<PartKind>>() {}), PartKind::code),
            byCode(CatalogueJson.resource("cautions.json", new TypeReference<List<Caution>>() {}), Caution::code),
            byCode(CatalogueJson.resource("sentences.json", new TypeReference<List<Sentence>>() {}), Sentence::code),
            Set.of());

    /** ISO 817 class A2L, as the nameplate writes them. */
    private static final Set<String> MILDLY_FLAMMABLE = Set.of("R-32", "R-454B");

    private final Map<String, Kind> kinds;
    private final Map<String, Task> tasks;
    private final Map<String, PartKind> parts;
    private final Map<String, Caution> cautions;
    private final Map<String, Sentence> sentences;
    private final Set<String> withdrawn;
    private final PartFacts partFacts;

    private Catalogue(
            Map<String, Kind> kinds,
            Map<String, Task> tasks,
            Map<String, PartKind> parts,
            Map<String, Caution> cautions,
            Map<String, Sentence> sentences,
            Set<String> withdrawn) {
        this.kinds = kinds;
        this.tasks = tasks;
        this.parts = parts;
        this.cautions = cautions;
        this.sentences = sentences;
        this.withdrawn = withdrawn;
        partFacts = new PartFacts(kinds.values());
    }

    /** What every business begins with. */
    public static Catalogue shipped() {
        return SHIPPED;
    }

    /** This catalogue with a business's own kinds and tasks added; one with a shipped code takes its place. */
    public Catalogue with(Collection<Kind> ownKinds, Collection<Task> ownTasks) {
        return new Catalogue(
                over(kinds, ownKinds, Kind::code),
                over(tasks, ownTasks, Task::code),
                parts,
                cautions,
                sentences,
                withdrawn);
    }

    /**
     * This catalogue where some kinds and tasks are known but not offered any more: whoever names one finds it, no list
     * holds it.
     *
     * @param codes {@code kind pool-heater}, {@code task pool-rinse}
     */
    public Catalogue without(Set<String> codes) {
        return new Catalogue(kinds, tasks, parts, cautions, sentences, Set.copyOf(codes));
    }

    /** This catalogue with a business's own finding sentences added. */
    public Catalogue withSentences(Collection<Sentence> own) {
        return new Catalogue(kinds, tasks, parts, cautions, over(sentences, own, Sentence::code), withdrawn);
    }

    public Collection<Kind> kinds() {
        return kinds.values().stream()
                .filter(kind -> !withdrawn.contains("kind " + kind.code()))
                .toList();
    }

    /** Every kind that a machine may be of, the withdrawn too. */
    public Collection<Kind> knownKinds() {
        return kinds.values();
    }

    public Collection<Task> tasks() {
        return tasks.values().stream()
                .filter(task -> !withdrawn.contains("task " + task.code()))
                .toList();
    }

    public Collection<PartKind> parts() {
        return parts.values();
    }

    public Collection<Caution> cautions() {
        return cautions.values();
    }

    public Collection<Sentence> sentences() {
        return sentences.values();
    }

    public Optional<Kind> findKind(String code) {
        return Optional.ofNullable(kinds.get(code));
    }

    public Optional<Task> findTask(String code) {
        return Optional.ofNullable(tasks.get(code));
    }

    public Optional<Caution> findCaution(String code) {
        return Optional.ofNullable(cautions.get(code));
    }

    public Optional<PartKind> findPart(String code) {
        return Optional.ofNullable(parts.get(code));
    }

    /**
     * Which one of a kind of part a machine takes; empty where nobody wrote it down.
     *
     * @param fits what fits the machine, as its card says
     */
    public Optional<PartSize> sizeOf(PartKind part, Map<String, String> fits) {
        return partFacts.size(part, fits);
    }

    /** How many of a kind of part a machine holds, as its card says; one where it says nothing. */
    public int countOf(String part, Map<String, String> fits) {
        return partFacts.count(part, fits);
    }

    public Optional<Sentence> findSentence(String code) {
        return Optional.ofNullable(sentences.get(code));
    }

    /** @throws NoSuchElementException when no kind has that code */
    public Kind kind(String code) {
        return findKind(code).orElseThrow(() -> new NoSuchElementException("kind " + code));
    }

    /** @throws NoSuchElementException when no task has that code */
    public Task task(String code) {
        return findTask(code).orElseThrow(() -> new NoSuchElementException("task " + code));
    }

    /** The tasks for one machine: of its kind, and for the facts that are known of it. */
    public List<Task> tasksFor(String kind, Map<String, String> fits) {
        return tasks().stream().filter(task -> task.isFor(kind, fits)).toList();
    }

    /** Every task that a kind can have, whatever the machine. */
    public List<Task> tasksOf(String kind) {
        return tasks().stream().filter(task -> task.kinds().contains(kind)).toList();
    }

    public List<Sentence> sentencesFor(String kind) {
        return sentences.values().stream()
                .filter(sentence -> sentence.fits(kind))
                .toList();
    }

    /** What may hurt somebody at this task on this machine: the task's own caution, and that its refrigerant can burn. */
    public List<Caution> cautionsFor(Task task, Map<String, String> nameplate) {
        boolean circuit = "refrigerant".equals(task.caution()) || "leak-search".equals(task.caution());
        boolean burns = MILDLY_FLAMMABLE.contains(nameplate.getOrDefault("refrigerant", ""));
        return Stream.concat(
                        Stream.ofNullable(task.caution()).flatMap(code -> findCaution(code).stream()),
                        circuit && burns ? findCaution("a2l").stream() : Stream.empty())
                .toList();
    }

    private static <T> Map<String, T> byCode(List<T> rows, Function<T, String> code) {
        Map<String, T> byCode = new LinkedHashMap<>();
        for (T row : rows) {
            if (byCode.put(code.apply(row), row) != null) {
                throw new IllegalStateException("twice: " + code.apply(row));
            }
        }
        return byCode;
    }

    private static <T> Map<String, T> over(Map<String, T> shipped, Collection<T> own, Function<T, String> code) {
        Map<String, T> merged = new LinkedHashMap<>(shipped);
        own.forEach(row -> merged.put(code.apply(row), row));
        return merged;
    }
}
