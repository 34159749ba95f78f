package changeover.web.session;

import io.quarkus.arc.Arc;
import io.quarkus.qute.EngineBuilder;
import io.quarkus.vertx.http.runtime.CurrentVertxRequest;
import jakarta.enterprise.event.Observes;
import java.util.Locale;

/** Every page speaks the language of the person in front of it, unless its maker has said another. */
class Speaking {

    void everyPage(@Observes EngineBuilder engine) {
        engine.addValueResolver(new NamesOutwards());
        engine.addTemplateInstanceInitializer(page -> {
            Locale locale = ofTheRequest();
            if (locale != null) {
                page.setLocale(locale);
            }
        });
    }

    private static @org.jspecify.annotations.Nullable Locale ofTheRequest() {
        if (!Arc.container().requestContext().isActive()) {
            return null;
        }
        var request = Arc.container().instance(CurrentVertxRequest.class).get().getCurrent();
        return request == null ? null : Mishaps.locale(request);
    }
}
