package changeover.web.walls;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Any;
import jakarta.enterprise.inject.spi.Bean;
import jakarta.enterprise.inject.spi.BeanManager;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.HttpMethod;
import jakarta.ws.rs.Path;
import java.lang.annotation.Annotation;
import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Every address that the running application answers, read off its own classes. */
@ApplicationScoped
class Routes {

    private static final Pattern PARAMETER = Pattern.compile("\\{([^}:]+)(?::[^}]+)?}");

    /** @param takes the media type of its body; empty when it says none */
    record Route(String method, String path, String takes) {

        boolean isApi() {
            return path.startsWith("/api/");
        }

        /** The path's parameters in order, without the business. */
        List<String> parameters() {
            return PARAMETER
                    .matcher(path)
                    .results()
                    .map(found -> found.group(1))
                    .filter(name -> !name.equals("slug"))
                    .toList();
        }

        /** The word in front of a parameter: {@code homes} of {@code homes/{home}}. */
        String before(String parameter) {
            return path.replaceAll("\\{where:[^}]*}", "{where}")
                    .replaceFirst("/\\{" + parameter + "(:[^}]*)?}.*", "")
                    .replaceFirst(".*/", "");
        }

        /** The path with each parameter's value in its place. */
        String at(java.util.function.UnaryOperator<String> value) {
            return PARAMETER.matcher(path).replaceAll(found -> value.apply(found.group(1)));
        }

        @Override
        public String toString() {
            return method + " " + path;
        }
    }

    @Inject
    BeanManager beans;

    List<Route> all() {
        return beans.getBeans(Object.class, Any.Literal.INSTANCE).stream()
                .map(Bean::getBeanClass)
                .distinct()
                .filter(type -> type.isAnnotationPresent(Path.class))
                .flatMap(Routes::of)
                .distinct()
                .sorted(Comparator.comparing(Route::path).thenComparing(Route::method))
                .toList();
    }

    private static Stream<Route> of(Class<?> type) {
        String base = type.getAnnotation(Path.class).value();
        return Arrays.stream(type.getDeclaredMethods())
                .flatMap(method -> verb(method).map(verb -> new Route(verb, path(base, method), takes(method))));
    }

    private static Stream<String> verb(Method method) {
        return Arrays.stream(method.getAnnotations())
                .map(Annotation::annotationType)
                .filter(annotation -> annotation.isAnnotationPresent(HttpMethod.class))
                .map(annotation -> annotation.getAnnotation(HttpMethod.class).value());
    }

    private static String path(String base, Method method) {
        Path own = method.getAnnotation(Path.class);
        String whole = "/" + base + (own == null ? "" : "/" + own.value());
        return whole.replaceAll("/+", "/").replaceFirst("(?<=.)/$", "");
    }

    private static String takes(Method method) {
        Consumes consumes = method.getAnnotation(Consumes.class);
        return consumes == null ? "" : consumes.value()[0];
    }
}
