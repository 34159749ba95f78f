package changeover.deploy.launcher;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The application started once more beside the running one, for one command and without its pages. */
public final class Inside {
    private Inside() {}

    /** Runs the command to its end on this terminal and returns its exit code. */
    public static int run(Path data, Map<String, String> environment, List<String> command)
            throws IOException, InterruptedException {
        List<String> words = new ArrayList<>(List.of(Child.java(), "-XX:TieredStopAtLevel=1"));
        words.addAll(Application.javaWords());
        words.addAll(List.of("-Xmx400m", "-jar", Application.jar(new DataFolder(data))));
        words.addAll(command);
        ProcessBuilder builder = new ProcessBuilder(words).inheritIO();
        builder.environment().putAll(environment);
        return builder.start().waitFor();
    }

    /** Tells the running launcher that a rehearsal has come to another day: it gives the application anew. */
    public static void remember(Path data, String name, String value) {
        new DataFolder(data).remember(name, value);
    }

    /** What the folder remembers of itself; empty when it remembers nothing of that name. */
    public static String remembered(Path data, String name) {
        return new DataFolder(data).settings().getProperty(name, "");
    }
}
