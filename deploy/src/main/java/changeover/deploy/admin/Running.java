package changeover.deploy.admin;

import changeover.deploy.launcher.Kernel;
import changeover.deploy.launcher.PrivateFile;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.Map;
import java.util.Properties;
import java.util.stream.Collectors;

/** The installation that a command means: it must be running, and its note tells how it is reached. */
final class Running {
    private final Path data;
    private final Properties note;

    private Running(Path data, Properties note) {
        this.data = data;
        this.note = note;
    }

    /** @throws Refusing when nothing runs on the folder */
    static Running on(Path data) {
        Properties note = PrivateFile.read(data.resolve("run").resolve("running.properties"));
        if (note.isEmpty() || !Kernel.alive(Long.parseLong(note.getProperty("launcher")))) {
            throw new Refusing(
                    "No installation is running on " + data + "; start it with deploy/start --data " + data + ".");
        }
        return new Running(data, note);
    }

    Path data() {
        return data;
    }

    String told(String name) {
        return note.getProperty(name);
    }

    /** What the application is told, for a command inside it. */
    Map<String, String> environment() {
        return note.stringPropertyNames().stream()
                .filter(name -> name.startsWith("env."))
                .collect(Collectors.toMap(name -> name.substring("env.".length()), note::getProperty));
    }

    /** A connection as one of the product's own roles, {@code app} or {@code owner}. */
    Connection connect(String role) throws SQLException {
        Properties properties = new Properties();
        properties.setProperty("user", told(role + ".user"));
        properties.setProperty("password", told(role + ".password"));
        return DriverManager.getConnection(told("jdbc"), properties);
    }
}
