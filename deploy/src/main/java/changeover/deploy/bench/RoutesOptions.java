package changeover.deploy.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What {@code deploy/bench routes} was asked.
 *
 * @param files the cases to measure; empty for the shipped ones
 * @param limit what each search may take
 * @param out a folder for the routes
 */
record RoutesOptions(List<Path> files, Duration limit, Optional<Path> out) {
    static final String USAGE = "deploy/bench routes [--dir DIR | --file F] [--seconds N] [--out DIR]";
    private static final List<String> SHIPPED = List.of("R101", "C101", "RC101", "R201");
    private static final int SECONDS = 10;

    /** A sentence for whoever typed it. */
    static final class NotUnderstood extends Exception {
        private static final long serialVersionUID = 1;

        NotUnderstood(String sentence) {
            super(sentence);
        }
    }

    static RoutesOptions of(List<String> words) throws NotUnderstood, IOException {
        List<Path> files = List.of();
        Duration limit = Duration.ofSeconds(SECONDS);
        Optional<Path> out = Optional.empty();
        boolean asked = false;
        for (int at = 0; at < words.size(); at += 2) {
            String word = words.get(at);
            require(at + 1 < words.size(), "%s stands without its value; it is %s.".formatted(word, USAGE));
            String value = words.get(at + 1);
            switch (word) {
                case "--dir", "--file" -> {
                    require(!asked, "Only one --dir or --file is understood.");
                    asked = true;
                    files = word.equals("--dir") ? inFolder(path(value)) : List.of(path(value));
                }
                case "--seconds" -> {
                    require(value.matches("[1-9][0-9]{0,3}"), "--seconds wants a whole number from 1 to 9999.");
                    limit = Duration.ofSeconds(Integer.parseInt(value));
                }
                case "--out" -> out = Optional.of(folder(path(value)));
                default -> throw new NotUnderstood("%s is not understood; it is %s.".formatted(word, USAGE));
            }
        }
        return new RoutesOptions(files, limit, out);
    }

    /** The cases by the name under which their routes are written. */
    Map<String, SolomonFile> cases() throws NotUnderstood, IOException {
        Map<String, SolomonFile> cases = new LinkedHashMap<>();
        try {
            if (files.isEmpty()) {
                for (String name : SHIPPED) {
                    cases.put(name + ".25", SolomonFile.shipped(name));
                }
            }
        } catch (SolomonFile.NotInFormat why) {
            throw new IOException(why);
        }
        for (Path file : files) {
            require(
                    Files.isRegularFile(file) && Files.isReadable(file),
                    "There is no file %s to read.".formatted(file));
            try {
                cases.put(nameOf(file), SolomonFile.read(Files.readAllBytes(file)));
            } catch (SolomonFile.NotInFormat why) {
                throw new NotUnderstood("%s is not in Solomon's format: %s.".formatted(file, why.getMessage()));
            }
        }
        return cases;
    }

    private static String nameOf(Path file) {
        String name = String.valueOf(file.getFileName());
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(0, dot) : name;
    }

    private static List<Path> inFolder(Path folder) throws NotUnderstood, IOException {
        require(Files.isDirectory(folder), "There is no folder %s.".formatted(folder));
        try (Stream<Path> all = Files.list(folder)) {
            List<Path> found = all.filter(
                            path -> path.toString().toLowerCase(Locale.ROOT).endsWith(".txt"))
                    .sorted()
                    .toList();
            require(!found.isEmpty(), "There is no .txt file in %s.".formatted(folder));
            return found;
        }
    }

    private static Path folder(Path folder) throws NotUnderstood {
        try {
            return Files.createDirectories(folder);
        } catch (IOException cause) {
            throw new NotUnderstood("The folder %s cannot be written.".formatted(folder));
        }
    }

    private static Path path(String word) throws NotUnderstood {
        try {
            return Path.of(word);
        } catch (InvalidPathException strange) {
            throw new NotUnderstood("%s is no path.".formatted(word));
        }
    }

    private static void require(boolean holds, String otherwise) throws NotUnderstood {
        if (!holds) {
            throw new NotUnderstood(otherwise);
        }
    }
}
