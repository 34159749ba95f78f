package changeover.web.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.quarkus.qute.Engine;
import io.quarkus.qute.EvalContext;
import io.quarkus.qute.Mapper;
import io.quarkus.qute.ReflectionValueResolver;
import io.quarkus.qute.Results;
import io.quarkus.qute.TemplateException;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.qute.ValueResolver;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletionStage;
import org.junit.jupiter.api.Test;

/** A page says the same with it and without it, and no other resolver is asked on the way. */
class NamesOutwardsTest {

    private static final Map<String, Object> DATA = Map.of(
            "shop", Map.of("name", "Maple Heating"),
            "rows", List.of(Map.of("name", "one"), Map.of("name", "two")),
            "name", "outside");

    private static final String PAGE = """
            {#include around}{#for row in rows}{shop.name} {row.name} {name}{#if row_hasNext}; {/if}{/for}\
            {#let one=rows.0}: {one.name} {name}{/let}{/include}""";

    private final List<String> asked = new ArrayList<>();

    private Engine engine(boolean outwards) {
        var builder = Engine.builder()
                .strictRendering(true)
                .addDefaults()
                .addValueResolver(new ReflectionValueResolver())
                .addValueResolver(everyOther());
        if (outwards) {
            builder.addValueResolver(new NamesOutwards());
        }
        Engine engine = builder.build();
        engine.putTemplate("around", engine.parse("[{#insert /}]"));
        return engine;
    }

    /** Stands for the many resolvers of the product's views. */
    private ValueResolver everyOther() {
        return new ValueResolver() {
            @Override
            public int getPriority() {
                return 12;
            }

            @Override
            public boolean appliesTo(EvalContext context) {
                if (context.getBase() == null || context.getBase() instanceof Mapper) {
                    asked.add(context.getName());
                }
                return false;
            }

            @Override
            public CompletionStage<Object> resolve(EvalContext context) {
                return Results.notFound(context);
            }
        };
    }

    private static String said(Engine engine, String template) {
        return page(engine, template, DATA).render();
    }

    /** Every fact under its own name, as checked templates take them. */
    private static TemplateInstance page(Engine engine, String template, Map<String, Object> data) {
        TemplateInstance page = engine.parse(template).instance();
        data.forEach(page::data);
        return page;
    }

    @Test
    void a_page_says_the_same() {
        String expected = "[Maple Heating one outside; Maple Heating two outside: one outside]";
        assertEquals(expected, said(engine(false), PAGE));
        assertEquals(expected, said(engine(true), PAGE));
    }

    @Test
    void the_others_are_not_asked_for_what_stands_around() {
        said(engine(true), PAGE);
        assertEquals(List.of(), asked);
    }

    /** The first name alone is looked for outwards: what an empty value holds is not taken from what stands around it. */
    @Test
    void the_name_of_nothing_is_not_taken_from_outside() {
        Map<String, Object> data = new HashMap<>(DATA);
        data.put("nobody", null);
        for (boolean outwards : new boolean[] {false, true}) {
            var template = engine(outwards)
                    .parse("{#include around}{nobody.name}{/include}")
                    .data(data);
            assertThrows(TemplateException.class, template::render);
        }
    }
}
