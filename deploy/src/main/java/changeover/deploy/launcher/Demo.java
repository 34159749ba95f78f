package changeover.deploy.launcher;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The two invented businesses: loaded once, on the first start, unless the person said no. */
final class Demo {
    private final DataFolder folder;

    Demo(DataFolder folder, boolean asked) {
        this.folder = folder;
        if (!folder.settings().containsKey("demo")) {
            folder.remember("demo", asked ? "wanted" : "no");
        }
    }

    boolean toLoad() {
        return folder.settings().getProperty("demo").equals("wanted");
    }

    boolean loaded() {
        return folder.settings().getProperty("demo").equals("loaded");
    }

    /** Runs the application once without its pages, to load the demo; what it prints are the sign-ins. */
    boolean load(Map<String, String> environment) throws IOException, InterruptedException {
        List<String> words = new ArrayList<>(List.of(Child.java(), Child.mark(folder, "application")));
        words.addAll(Application.javaWords());
        words.addAll(List.of(
                "-Xmx400m",
                "-jar",
                Application.jar(folder),
                "demo",
                "load",
                "--sign-ins",
                signInFile().toString()));
        PrivateFile.write(signInFile(), new byte[0]);
        if (!Program.run(words, environment, folder.root(), folder.log("demo"))) {
            throw new CannotStart("The demo could not be loaded; the reasons stand in " + folder.log("demo") + ".");
        }
        folder.remember("demo", "loaded");
        return true;
    }

    List<String> signIns() throws IOException {
        return loaded() ? Files.readAllLines(signInFile()) : List.of();
    }

    private Path signInFile() {
        return folder.root().resolve("demo-sign-ins.txt");
    }
}
