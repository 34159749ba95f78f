package changeover.web.session;

import changeover.scheduling.closeout.Operation;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A finding as it is typed: at a task, at the door of a visit without one, or in the office when a visit is corrected. */
public final class FindingTyped {

    /** The level that says that nothing was found. */
    public static final String NOTHING = "nothing";

    private static final int LINE = 200;
    private static final int WORDS = 2000;

    private FindingTyped() {}

    /**
     * What was found; empty where the form says nothing.
     *
     * @param machine at which it was found; null for none
     * @param task with which it was found; null for none
     */
    public static Optional<Operation.Found> read(Typed typed, @Nullable UUID machine, @Nullable UUID task) {
        String level = typed.line("level", 40);
        String sentence = typed.line("sentence", LINE);
        String text = typed.line("text", WORDS);
        if ((level == null || level.equals(NOTHING)) && sentence == null && text == null) {
            return Optional.empty();
        }
        String chosen = typed.oneOf("level", Set.of("information", "recommended", "urgent", "do_not_use"));
        String answer = typed.line("answer", 10);
        return Optional.of(new Operation.Found(
                chosen,
                sentence,
                text,
                text == null ? null : typed.oneOf("language", Set.of("en", "fr")),
                machine,
                task,
                typed.line("toldTo", LINE),
                answer == null ? null : Boolean.valueOf(answer.equals("yes")),
                typed.line("next", 40),
                null));
    }

    /** Where a refused finding is put right on the form. */
    public static String field(String field) {
        return field.isEmpty() ? "text" : field.equals("equipment") ? "machine" : field;
    }
}
