package changeover.web.office;

import changeover.scheduling.dayplan.Moving;
import changeover.web.session.Typed;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The two fields of a form that say why an hour moves and who asked for it; both or none. */
final class MovingForm {

    private static final int MOST = 500;

    private MovingForm() {}

    /** Null where nothing was said. */
    static @Nullable Moving of(Typed typed) {
        boolean said = typed.ticked("why") || typed.ticked("asked");
        if (!said) {
            return null;
        }
        String by = typed.oneOf("asked", Set.of("customer", "us"));
        String why = typed.text("why", MOST);
        return why.isEmpty() ? null : new Moving(Moving.By.ofCode(by), why);
    }
}
