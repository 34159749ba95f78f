package changeover.scheduling.dayplan.routes;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The routing library's native files, unpacked once for all the solvers that this process starts, and gone when it ends. */
final class Unpacked {
    private static final String FOLDER = "ortools-linux-x86-64/";
    static final String ENTRY = "libjniortools.so";

    private static @Nullable Path unpacked;

    private Unpacked() {}

    /** The file that a solver loads; the others lie beside it. */
    static synchronized Path library() throws IOException {
        Path known = unpacked;
        if (known == null || !Files.exists(known.resolve(ENTRY))) {
            known = unpack();
            unpacked = known;
        }
        return known.resolve(ENTRY);
    }

    private static Path unpack() throws IOException {
        String jar = SolverClasses.jarOf(FOLDER + ENTRY)
                .orElseThrow(() -> new IOException("the routing library is not built for this machine"));
        Path folder = Files.createTempDirectory("changeover-roads");
        Runtime.getRuntime().addShutdownHook(new Thread(() -> clear(folder)));
        try (JarFile packed = new JarFile(jar)) {
            List<JarEntry> files = packed.stream()
                    .filter(entry -> entry.getName().startsWith(FOLDER) && !entry.isDirectory())
                    .toList();
            for (JarEntry entry : files) {
                Path name = Path.of(entry.getName()).getFileName();
                try (InputStream in = packed.getInputStream(entry)) {
                    Files.copy(in, folder.resolve(name));
                }
            }
        }
        return folder;
    }

    /** Takes a folder away with all that is in it. */
    static void clear(Path folder) {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(path);
            }
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        }
    }
}
