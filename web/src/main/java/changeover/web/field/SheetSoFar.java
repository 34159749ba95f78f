package changeover.web.field;

import changeover.scheduling.closeout.DaySheet.Said;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** What was said about a visit and still stands, asked task by task. */
record SheetSoFar(List<Said> said) {

    Optional<Said> last(String kind) {
        return said.stream().filter(one -> one.kind().equals(kind)).reduce((_, later) -> later);
    }

    Optional<Said> outcome(UUID task) {
        return said.stream()
                .filter(one -> one.kind().equals("task") && is(one, "task", task))
                .reduce((_, later) -> later);
    }

    Optional<Said> reading(UUID task, String code) {
        return said.stream()
                .filter(one -> one.kind().equals("reading") && is(one, "task", task))
                .filter(one -> text(one, "code").equals(code))
                .reduce((_, later) -> later);
    }

    /** The findings and parts that were said with a task. */
    List<Said> findings(UUID task) {
        return said.stream()
                .filter(one -> one.kind().equals("finding") && is(one, "task", task))
                .toList();
    }

    /** The photos that were taken with a task. */
    List<Said> photos(UUID task) {
        return said.stream()
                .filter(one -> one.kind().equals("photo") && is(one, "task", task))
                .toList();
    }

    List<Said> parts() {
        return each("part");
    }

    List<Said> each(String kind) {
        return said.stream().filter(one -> one.kind().equals(kind)).toList();
    }

    Optional<Said> one(UUID operation) {
        return said.stream().filter(said -> said.id().equals(operation)).findFirst();
    }

    /** A field of what was said; empty when it was left out. */
    static String text(Said said, String field) {
        Object value = said.body().get(field);
        return value == null ? "" : value.toString();
    }

    private static boolean is(Said said, String field, UUID id) {
        return text(said, field).equals(id.toString());
    }
}
