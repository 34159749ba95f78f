package changeover.scheduling.closeout;

import changeover.contracts.customers.Equipment;
import changeover.scheduling.closeout.Operation.MachineFound;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** How a machine that was found stands on the wire: what its plate says, and what fits it by the names of its kind. */
final class MachineJson {

    private MachineJson() {}

    static MachineFound read(Body body) {
        return new MachineFound(new Equipment.Facts(
                null,
                body.words("kind", Body.LONGEST_LINE),
                body.words("name", Body.LONGEST_LINE),
                body.wordsOrNull("make", Body.LONGEST_LINE),
                body.wordsOrNull("model", Body.LONGEST_LINE),
                body.wordsOrNull("serial", Body.LONGEST_LINE),
                body.wordsOrNull("location", Body.LONGEST_LINE),
                body.dayOrNull("installedOn"),
                null,
                null,
                null,
                null,
                body.named("fits"),
                body.named("nameplate")));
    }

    static ObjectNode write(MachineFound found, ObjectNode json) {
        Equipment.Facts facts = found.facts();
        put(put(put(json, "kind", facts.kind()), "name", facts.name()), "make", facts.make());
        put(put(put(json, "model", facts.model()), "serial", facts.serial()), "location", facts.location());
        LocalDate installed = facts.installedOn();
        put(json, "installedOn", installed == null ? null : installed.toString());
        put(json, "fits", facts.fits());
        put(json, "nameplate", facts.nameplate());
        return json;
    }

    private static ObjectNode put(ObjectNode json, String field, @Nullable String value) {
        return value == null ? json : json.put(field, value);
    }

    private static void put(ObjectNode json, String field, Map<String, String> named) {
        if (!named.isEmpty()) {
            named.forEach(json.putObject(field)::put);
        }
    }
}
