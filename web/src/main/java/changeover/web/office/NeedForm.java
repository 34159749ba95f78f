package changeover.web.office;

import changeover.scheduling.dayplan.Need;
import changeover.web.session.Typed;
import java.time.LocalTime;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The fields in which a need is written. */
final class NeedForm {

    private static final Set<String> TICKETS = Set.of("none", "refrigerant", "gas", "electrical");

    private NeedForm() {}

    static Need read(Typed typed, boolean withTicket) {
        int people = typed.whole("people", 1, 2);
        String ticket = withTicket ? typed.oneOf("ticket", TICKETS) : "none";
        return new Need(
                people,
                ticket.equals("none") ? Set.of() : Set.of(ticket),
                hour(typed, "earliest"),
                hour(typed, "latest"));
    }

    private static @Nullable LocalTime hour(Typed typed, String field) {
        return typed.line(field, 10) == null ? null : typed.time(field);
    }

    static Map<String, String> fields(Need need, String why) {
        var fields = new LinkedHashMap<String, String>();
        fields.put("people", String.valueOf(need.people()));
        fields.put("ticket", need.tickets().stream().findFirst().orElse("none"));
        fields.put("earliest", need.earliest() == null ? "" : need.earliest().toString());
        fields.put("latest", need.latest() == null ? "" : need.latest().toString());
        fields.put("why", why);
        return fields;
    }
}
