package changeover.deploy.launcher;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A Java program started by the launcher: in a session of its own, so that Ctrl-C reaches the launcher alone, and marked, so that a later launcher knows it. */
final class Child {
    private static final Duration GENTLY = Duration.ofSeconds(20);
    private static final long LOG_BYTES = 20L << 20;
    private static final Path SETSID = Path.of("/usr/bin/setsid");

    private final Process process;

    private Child(Process process) {
        this.process = process;
    }

    /** The words that mark a process as this part of this folder's installation. */
    static String mark(DataFolder folder, String part) {
        return "-Dchangeover.part=" + part + ":" + folder.root() + ":";
    }

    static Child start(DataFolder folder, String part, List<String> javaWords, Map<String, String> environment)
            throws IOException {
        Path log = folder.log(part);
        if (Files.exists(log) && Files.size(log) > LOG_BYTES) {
            Files.move(log, log.resolveSibling(part + ".1.log"), StandardCopyOption.REPLACE_EXISTING);
        }
        List<String> words = new ArrayList<>();
        if (Files.isExecutable(SETSID)) {
            words.add(SETSID.toString());
        }
        words.add(java());
        words.add(mark(folder, part));
        words.addAll(javaWords);
        ProcessBuilder builder = new ProcessBuilder(words)
                .directory(folder.root().toFile())
                .redirectInput(Path.of("/dev/null").toFile())
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.appendTo(log.toFile()));
        builder.environment().putAll(environment);
        return new Child(builder.start());
    }

    static String java() {
        return Path.of(System.getProperty("java.home"), "bin", "java").toString();
    }

    boolean alive() {
        return process.isAlive();
    }

    void stop() {
        process.destroy();
        if (!Waiting.until(GENTLY, () -> !process.isAlive())) {
            process.destroyForcibly();
            Waiting.until(GENTLY, () -> !process.isAlive());
        }
    }

    /** Stops what an earlier launcher of this folder left behind when it was killed. */
    static void stopLeftovers(DataFolder folder, String part) throws IOException {
        String mark = mark(folder, part);
        List<Long> left = new ArrayList<>();
        try (var entries = Files.list(Path.of("/proc"))) {
            entries.map(entry -> entry.getFileName().toString())
                    .filter(name -> name.chars().allMatch(Character::isDigit))
                    .map(Long::valueOf)
                    .filter(pid -> Kernel.commandLine(pid)
                            .filter(words -> words.contains(mark))
                            .isPresent())
                    .forEach(left::add);
        }
        left.forEach(pid -> Kernel.signal("TERM", pid));
        if (!Waiting.until(GENTLY, () -> left.stream().noneMatch(Kernel::alive))) {
            left.forEach(pid -> Kernel.signal("KILL", pid));
            Waiting.until(GENTLY, () -> left.stream().noneMatch(Kernel::alive));
        }
    }
}
