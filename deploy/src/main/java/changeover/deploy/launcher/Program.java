package changeover.deploy.launcher;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** Another program, run to its end, with its output in a log. */
final class Program {
    private Program() {}

    /** Returns whether it ended well. */
    static boolean run(List<String> words, Map<String, String> environment, Path folder, Path log)
            throws IOException, InterruptedException {
        Files.createDirectories(folder);
        ProcessBuilder builder = new ProcessBuilder(words)
                .directory(folder.toFile())
                .redirectInput(Path.of("/dev/null").toFile())
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.appendTo(log.toFile()));
        builder.environment().putAll(environment);
        return builder.start().waitFor() == 0;
    }
}
