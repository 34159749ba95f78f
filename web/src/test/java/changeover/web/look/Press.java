package changeover.web.look;

import changeover.web.Messages;
import io.quarkus.qute.Engine;
import io.quarkus.qute.EvalContext;
import io.quarkus.qute.HtmlEscaper;
import io.quarkus.qute.NamespaceResolver;
import io.quarkus.qute.RawString;
import io.quarkus.qute.ReflectionValueResolver;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.qute.TemplateLocator;
import io.quarkus.qute.UserTagSectionHelper;
import io.quarkus.qute.Variant;
import io.quarkus.qute.i18n.Message;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.lang.reflect.Method;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.concurrent.CompletionStage;
import java.util.stream.Stream;

/** Prints a page with the product's own layouts, tags and words, without the product around it. */
final class Press {

    private static final Path TEMPLATES = Path.of("src/main/resources/templates");
    private static final Path SAMPLES = Path.of("src/test/resources/look");

    private final Engine engine;
    private final Properties french = new Properties();

    Press() throws IOException {
        try (Reader reader = Files.newBufferedReader(Path.of("src/main/resources/messages/msg_fr-CA.properties"))) {
            french.load(reader);
        }
        var builder = Engine.builder()
                .addDefaults()
                .addValueResolver(new ReflectionValueResolver())
                .addResultMapper(new HtmlEscaper(List.of("text/html")))
                .addValueResolver(io.quarkus.qute.ValueResolver.builder()
                        .applyToBaseClass(String.class)
                        .applyToName("raw")
                        .resolveSync(context -> new RawString((String) context.getBase()))
                        .build())
                .addLocator(this::locate)
                .addNamespaceResolver(NamespaceResolver.builder("msg")
                        .resolveAsync(this::message)
                        .build())
                .addNamespaceResolver(NamespaceResolver.builder("inject")
                        .resolve(context ->
                                Map.of("parameterName", "csrf", "token", "t", "headerName", "X-CSRF-TOKEN", "id", ""))
                        .build());
        for (String tag : tags()) {
            builder.addSectionHelper(new UserTagSectionHelper.Factory(tag, "tags/" + tag));
        }
        engine = builder.build();
    }

    /** The page in one language, as it would go out. */
    String print(String sample, String language, Map<String, Object> data) {
        TemplateInstance page = engine.getTemplate(sample).instance();
        data.forEach(page::data);
        page.setLocale(Locale.forLanguageTag(language));
        return page.render();
    }

    /** Every word of the layouts that French lacks. */
    List<String> wordsWithoutFrench() {
        return Stream.of(Messages.class.getMethods())
                .map(Method::getName)
                .filter(name -> french.getProperty(name) == null)
                .toList();
    }

    static List<String> tags() throws IOException {
        try (Stream<Path> files = Files.list(TEMPLATES.resolve("tags"))) {
            return files.map(file -> file.getFileName().toString().replace(".html", ""))
                    .sorted()
                    .toList();
        }
    }

    private Optional<TemplateLocator.TemplateLocation> locate(String id) {
        for (Path folder : List.of(TEMPLATES, SAMPLES)) {
            Path file = folder.resolve(id + ".html");
            if (Files.exists(file)) {
                return Optional.of(new Sheet(file));
            }
        }
        return Optional.empty();
    }

    private CompletionStage<Object> message(EvalContext context) {
        Method method = Stream.of(Messages.class.getMethods())
                .filter(candidate -> candidate.getName().equals(context.getName()))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no such word: " + context.getName()));
        Locale locale = (Locale) context.getAttribute(TemplateInstance.LOCALE);
        String text = locale != null && locale.getLanguage().equals("fr")
                ? french.getProperty(method.getName())
                : method.getAnnotation(Message.class).value();
        List<CompletionStage<Object>> values = new ArrayList<>();
        context.getParams().forEach(param -> values.add(context.evaluate(param)));
        TemplateInstance words = engine.parse(text).instance();
        for (int i = 0; i < values.size(); i++) {
            words.data(
                    method.getParameters()[i].getName(),
                    values.get(i).toCompletableFuture().join());
        }
        return words.renderAsync().thenApply(done -> done);
    }

    /** One template file. */
    private record Sheet(Path file) implements TemplateLocator.TemplateLocation {

        @Override
        public Reader read() {
            try {
                return file.toString().contains("tags")
                        ? new StringReader(Files.readString(file).strip())
                        : new InputStreamReader(Files.newInputStream(file), StandardCharsets.UTF_8);
            } catch (IOException failure) {
                throw new UncheckedIOException(failure);
            }
        }

        @Override
        public Optional<Variant> getVariant() {
            return Optional.of(Variant.forContentType("text/html"));
        }
    }
}
