package changeover.scheduling.dayplan.routes;

import java.net.MalformedURLException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Where the few classes lie that the solver's process needs, wherever this process has its own from. */
final class SolverClasses {
    /** One class of every library that the solver loads. */
    private static final List<String> LIBRARIES =
            List.of("com.google.ortools.constraintsolver.RoutingModel", "com.google.protobuf.Message");

    private SolverClasses() {}

    /** The jars and folders, each once; what is missing here is missing there too, and the solver then says so. */
    static Set<String> found() {
        Set<String> found = new LinkedHashSet<>();
        Stream.concat(Stream.of(SolverClasses.class.getName()), LIBRARIES.stream())
                .map(SolverClasses::home)
                .flatMap(Optional::stream)
                .forEach(found::add);
        return found;
    }

    private static Optional<String> home(String name) {
        try {
            CodeSource source = Class.forName(name, false, SolverClasses.class.getClassLoader())
                    .getProtectionDomain()
                    .getCodeSource();
            return Optional.ofNullable(source).map(CodeSource::getLocation).flatMap(SolverClasses::path);
        } catch (ClassNotFoundException missing) {
            return Optional.empty();
        }
    }

    /** The jar that holds a resource, which is told as {@code jar:file:/…/x.jar!/name}. */
    static Optional<String> jarOf(String resource) {
        URL found = SolverClasses.class.getClassLoader().getResource(resource);
        String text = found == null ? "" : found.toString();
        int inside = text.indexOf("!/");
        if (!text.startsWith("jar:") || inside < 0) {
            return Optional.empty();
        }
        try {
            return path(URI.create(text.substring("jar:".length(), inside)).toURL());
        } catch (MalformedURLException | IllegalArgumentException strange) {
            return Optional.empty();
        }
    }

    private static Optional<String> path(URL location) {
        try {
            return Optional.of(Path.of(location.toURI()).toString());
        } catch (URISyntaxException | IllegalArgumentException strange) {
            return Optional.empty();
        }
    }
}
