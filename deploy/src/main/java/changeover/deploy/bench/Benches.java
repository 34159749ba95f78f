package changeover.deploy.bench;

import changeover.deploy.launcher.Laboratory;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** {@code deploy/bench}: runs one measure, or all of them and writes RESULTS.md, on a database of its own. */
public final class Benches {
    private static final Map<String, String> MEASURES = new LinkedHashMap<>();
    private static final List<String> LATER = List.of("start", "phone");
    private static final Path ROOT = Path.of(System.getProperty("changeover.root", "."));

    /** The measures that need no database. */
    private static final String ROUTES = "routes";

    private static final String DOCUMENTS = "documents";

    static {
        MEASURES.put("season", "the year of 10,000 agreements, over COPY of the same rows into the same tables");
        MEASURES.put("billing", "invoices a second of a billing run, over bare PDF pages and multi-row inserts");
        MEASURES.put(DOCUMENTS, "invoices a second as papers, over bare PDF pages with the face read in three ways");
        MEASURES.put("page", "the list of 50 documents, over a bare page of the same rows; and its statements");
        MEASURES.put("season-again", "the same season once more, which writes nothing, over that COPY");
        MEASURES.put(
                "tenants",
                "one business's work among 10, 100, 1,000 and 10,000, worst over best; and beside one that bills");
        MEASURES.put(ROUTES, "days of routes, over the best known of published cases: " + RoutesOptions.USAGE);
    }

    private Benches() {}

    public static void main(String[] words) throws Exception {
        changeover.deploy.launcher.Logs.quiet();
        System.exit(run(List.of(words)));
    }

    private static int run(List<String> words) throws Exception {
        if (words.contains("--help")) {
            System.out.println(
                    "Measures the product against bare tools, both sides interleaved.\n  deploy/bench NAME|all [--size N]"
                            + "\n  deploy/bench tenants [--size N] [--minutes N]");
            MEASURES.forEach((name, what) -> System.out.println("  " + name + ": " + what));
            System.out.println("  " + String.join(", ", LATER) + ": not yet there");
            return 0;
        }
        if (words.isEmpty()) {
            System.err.println("deploy/bench needs the name of a measure; deploy/bench --help lists them.");
            return 1;
        }
        String name = words.getFirst();
        if (LATER.contains(name)) {
            System.err.println("The measure " + name + " is not yet there.");
            return 1;
        }
        if (!name.equals("all") && !MEASURES.containsKey(name)) {
            System.err.println("There is no measure " + name + "; deploy/bench --help lists them.");
            return 1;
        }
        List<String> options = words.subList(1, words.size());
        Optional<String> wrong = name.equals(ROUTES) || name.equals(DOCUMENTS)
                ? Optional.empty()
                : BenchOptions.wrong(name.equals("all") ? "season" : name, options);
        if (wrong.isPresent()) {
            System.err.println(wrong.get().replace("deploy/bench season takes", "deploy/bench " + name + " takes"));
            return 1;
        }
        return measure(name.equals("all") ? List.copyOf(MEASURES.keySet()) : List.of(name), options);
    }

    private static int measure(List<String> names, List<String> options) throws Exception {
        List<String> lines = new ArrayList<>();
        for (String name : names) {
            if (name.equals(ROUTES) || name.equals(DOCUMENTS)) {
                List<String> own = names.size() > 1 ? List.of() : options;
                Optional<String> line = name.equals(ROUTES) ? RoutesBench.run(own) : DocumentsBench.run(own);
                if (line.isEmpty()) {
                    return 1;
                }
                System.out.println(line.get());
                lines.add(line.get());
                continue;
            }
            try (Laboratory laboratory = Laboratory.open(Files.createTempDirectory("changeover-bench"), ROOT)) {
                List<String> command = new ArrayList<>(List.of("bench", name));
                command.addAll(BenchOptions.own(name, options));
                String line = laboratory.lastLine(command);
                if (!line.contains("verdict=")) {
                    return 1;
                }
                lines.add(line);
            }
        }
        if (names.size() > 1) {
            write(lines);
        }
        return lines.stream().allMatch(line -> line.contains("checksum=ok") || line.contains("infeasible=0")) ? 0 : 1;
    }

    private static void write(List<String> lines) throws IOException {
        Path file = ROOT.resolve("deploy").resolve("RESULTS.md");
        String text = "\n## %s, %d cores, Java %s\n\n```\n%s\n```\n"
                .formatted(
                        LocalDate.now(ZoneOffset.UTC),
                        Runtime.getRuntime().availableProcessors(),
                        Runtime.version().feature(),
                        String.join("\n", lines));
        String before = Files.exists(file)
                ? Files.readString(file)
                : "# Results\n\nWritten by `deploy/bench all`; the newest stand last.\n";
        Files.writeString(file, before + text);
    }
}
