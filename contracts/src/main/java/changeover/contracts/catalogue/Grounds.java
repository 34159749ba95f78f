package changeover.contracts.catalogue;

import changeover.contracts.words.Wording;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What a promise rests on: common practice, the label of the machine, a law, a standard or an agency; and where that is
 * published.
 *
 * @param source null for common practice, and where nobody wrote it down
 */
public record Grounds(String basis, @Nullable String source) {

    private static final Wording PLATE =
            new Wording("the machine’s own plate and manual", "la plaque et le manuel de l’appareil");

    public static Grounds of(Task task) {
        return new Grounds(task.basis(), task.source());
    }

    /**
     * Of a task that was planned earlier and kept its basis: the source is told only where the same basis still stands.
     *
     * @param copied the task as it was copied, where the business wrote it itself
     */
    public static Grounds kept(
            String taskCode, @Nullable UUID equipmentId, String basis, Optional<Task> copied, OwnCatalogue.Own own) {
        Optional<Task> task = copied.or(() -> own.catalogue().findTask(taskCode));
        if (task.isPresent() && task.get().basis().equals(basis)) {
            return of(task.get());
        }
        return own.intervals().stream()
                .filter(one -> one.taskCode().equals(taskCode) && one.basis().equals(basis))
                .filter(one -> one.equipmentId() == null || one.equipmentId().equals(equipmentId))
                .findFirst()
                .map(one -> new Grounds(basis, one.source()))
                .orElse(new Grounds(basis, null));
    }

    /** The basis in the reader's words; empty where the publication's own name begins with it. */
    public String wordsIn(Locale locale) {
        if (!publication().isEmpty() && publication().startsWith(basis)) {
            return "";
        }
        return PLATE.en().equals(source) ? basisIn(locale) + " (" + PLATE.in(locale) + ")" : basisIn(locale);
    }

    /** The name under which it is published, as it stands there, in its own language; empty without one. */
    public String publication() {
        return source == null || PLATE.en().equals(source) ? "" : source.strip();
    }

    /** The bases that the shipped catalogue names in plain words; the name of a standard is the same in every language. */
    public String basisIn(Locale locale) {
        return new Wording(
                        basis,
                        switch (basis) {
                            case "common practice" -> "usage du métier";
                            case "nameplate" -> "plaque signalétique";
                            case "published advice" -> "conseil publié";
                            case "label on the machine" -> "étiquette de l’appareil";
                            case "your plan" -> "votre formule";
                            case "new home warranty care guides" ->
                                "guides d’entretien des garanties de maisons neuves";
                            case "Ohm’s law" -> "loi d’Ohm";
                            case "Natural Resources Canada" -> "Ressources naturelles Canada";
                            case "NB Power" -> "Énergie NB";
                            case "CMHC" -> "SCHL";
                            default -> basis;
                        })
                .in(locale);
    }
}
