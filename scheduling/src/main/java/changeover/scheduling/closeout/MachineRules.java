package changeover.scheduling.closeout;

import changeover.contracts.words.Refusal;
import changeover.scheduling.closeout.Operation.Found;
import changeover.scheduling.closeout.Operation.MachineFound;
import changeover.scheduling.closeout.Operation.PartTaken;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

/**
 * A machine is written down on an open sheet, as its kind declares it and under a name that no other machine of the home
 * has; what is found or used on it may name it from then on. After the closing the office corrects it on its own page.
 */
record MachineRules(VisitAtHand visit, Surroundings shop) {

    List<Refusal> refusals(Sheet sheet, MachineFound found) {
        if (sheet.isClosed()) {
            return List.of(Refusal.of("closeout.machine-closed"));
        }
        List<Refusal> refusals = new ArrayList<>(shop.aboutMachine(found.facts()));
        String name = found.facts().name();
        boolean taken = visit.machines().values().stream()
                        .anyMatch(machine -> machine.name().equals(name))
                || onSheet(sheet).stream()
                        .anyMatch(other -> other.facts().name().equals(name));
        if (taken) {
            refusals.addAll(SheetRules.refused("machine-name", "name"));
        }
        return refusals;
    }

    /** Whether it stands in the home, or was written down on this sheet. */
    boolean stands(Sheet sheet, UUID machine) {
        return visit.machines().containsKey(machine)
                || sheet.of(machine)
                        .filter(taken -> taken.operation() instanceof MachineFound)
                        .isPresent();
    }

    /** Whether a finding or a part of the sheet speaks of the machine. */
    static boolean isNamed(Sheet sheet, UUID machine) {
        return sheet.each(Found.class, (_, found) -> found.equipment()).contains(machine)
                || sheet.each(PartTaken.class, (_, part) -> part.equipment()).contains(machine);
    }

    static List<MachineFound> onSheet(Sheet sheet) {
        return sheet.each(MachineFound.class, (_, found) -> found);
    }
}
