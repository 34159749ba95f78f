package changeover.web.office;

import changeover.contracts.catalogue.Kind;
import changeover.contracts.customers.Equipment;
import changeover.web.session.FactFields;
import changeover.web.session.Typed;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A machine's form: what it asks whatever the kind, and what the kind's own data ask. */
final class MachineForm {

    private static final int LINE = 120;

    private MachineForm() {}

    static Equipment.Facts read(Kind kind, Typed typed) {
        return new Equipment.Facts(
                typed.idOrNone("owner"),
                kind.code(),
                typed.text("name", LINE),
                typed.line("make", LINE),
                typed.line("model", LINE),
                typed.line("serial", LINE),
                typed.line("location", LINE),
                typed.installedOrNone("installedOn"),
                typed.line("installedBy", LINE),
                typed.dayOrNone("makerWarrantyUntil"),
                typed.dayOrNone("labourWarrantyUntil"),
                typed.line("registration", LINE),
                FactFields.fitsOf(kind, typed),
                FactFields.plateOf(kind, typed));
    }

    static Map<String, String> filled(Equipment.Facts facts) {
        var fields = new HashMap<>(FactFields.filled(facts.fits(), facts.nameplate()));
        fields.put("owner", facts.ownerId() == null ? "" : facts.ownerId().toString());
        fields.put("name", facts.name());
        fields.put("make", orEmpty(facts.make()));
        fields.put("model", orEmpty(facts.model()));
        fields.put("serial", orEmpty(facts.serial()));
        fields.put("location", orEmpty(facts.location()));
        fields.put("installedOn", orEmpty(facts.installedOn()));
        fields.put("installedBy", orEmpty(facts.installedBy()));
        fields.put("makerWarrantyUntil", orEmpty(facts.makerWarrantyUntil()));
        fields.put("labourWarrantyUntil", orEmpty(facts.labourWarrantyUntil()));
        fields.put("registration", orEmpty(facts.registration()));
        return fields;
    }

    private static String orEmpty(@Nullable String text) {
        return text == null ? "" : text;
    }

    private static String orEmpty(@Nullable LocalDate day) {
        return day == null ? "" : day.toString();
    }
}
