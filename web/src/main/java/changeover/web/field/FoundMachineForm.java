package changeover.web.field;

import changeover.contracts.catalogue.Kind;
import changeover.contracts.customers.Equipment;
import changeover.web.session.FactFields;
import changeover.web.session.Typed;

/** What a technician reads off a machine: its plate, where it stands, what fits it. Papers are the office's. */
final class FoundMachineForm {

    private static final int LINE = 120;

    private FoundMachineForm() {}

    static Equipment.Facts read(Kind kind, Typed typed) {
        return new Equipment.Facts(
                null,
                kind.code(),
                typed.text("name", LINE),
                typed.line("make", LINE),
                typed.line("model", LINE),
                typed.line("serial", LINE),
                typed.line("location", LINE),
                typed.installedOrNone("installedOn"),
                null,
                null,
                null,
                null,
                FactFields.fitsOf(kind, typed),
                FactFields.plateOf(kind, typed));
    }
}
