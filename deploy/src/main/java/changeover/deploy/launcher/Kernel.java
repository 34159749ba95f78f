package changeover.deploy.launcher;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What the kernel says about processes: a dead one that nobody has collected yet does not count as alive. */
public final class Kernel {
    private static final Path PROC = Path.of("/proc");

    private Kernel() {}

    public static boolean alive(long pid) {
        try {
            String stat = Files.readString(PROC.resolve(pid + "/stat"));
            char state = stat.charAt(stat.lastIndexOf(')') + 2);
            return state != 'Z' && state != 'X';
        } catch (IOException e) {
            return false;
        }
    }

    /** The command line of a living process, its words separated by blanks. */
    static Optional<String> commandLine(long pid) {
        try {
            byte[] words = Files.readAllBytes(PROC.resolve(pid + "/cmdline"));
            return alive(pid)
                    ? Optional.of(new String(words, StandardCharsets.UTF_8).replace('\0', ' '))
                    : Optional.empty();
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** The living processes that work in the folder. */
    static List<Long> workingIn(Path folder) throws IOException {
        Path real = folder.toRealPath();
        List<Long> found = new ArrayList<>();
        try (Stream<Path> entries = Files.list(PROC)) {
            for (Path entry : (Iterable<Path>) entries::iterator) {
                String name = entry.getFileName().toString();
                if (name.chars().allMatch(Character::isDigit)
                        && real.equals(workingFolder(entry))
                        && alive(Long.parseLong(name))) {
                    found.add(Long.parseLong(name));
                }
            }
        }
        return found;
    }

    private static Path workingFolder(Path entry) {
        try {
            return Files.readSymbolicLink(entry.resolve("cwd"));
        } catch (IOException e) {
            return PROC;
        }
    }

    /** Sends a signal by name (TERM, INT, KILL); a process that is already gone is no error. */
    static void signal(String name, long pid) {
        if (name.equals("INT")) {
            try {
                new ProcessBuilder("kill", "-INT", Long.toString(pid))
                        .redirectErrorStream(true)
                        .start()
                        .waitFor();
            } catch (IOException e) {
                ProcessHandle.of(pid).ifPresent(ProcessHandle::destroy);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        } else if (name.equals("KILL")) {
            ProcessHandle.of(pid).ifPresent(ProcessHandle::destroyForcibly);
        } else {
            ProcessHandle.of(pid).ifPresent(ProcessHandle::destroy);
        }
    }
}
