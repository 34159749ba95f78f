package changeover.web.session;

import io.quarkus.qute.i18n.Localized;
import io.quarkus.qute.i18n.MessageBundles;
import java.util.Locale;

/** The words of pages where no template says them. */
public final class Bundles {

    private Bundles() {}

    /** The words of a bundle, in the French of Quebec or in English. */
    public static <T> T of(Class<T> bundle, Locale locale) {
        return locale.getLanguage().equals("fr")
                ? MessageBundles.get(bundle, Localized.Literal.of("fr-CA"))
                : MessageBundles.get(bundle);
    }
}
