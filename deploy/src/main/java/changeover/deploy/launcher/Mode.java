package changeover.deploy.launcher;

import java.time.LocalDate;
import java.util.Optional;
import java.util.Properties;

/** A folder is for real work or for rehearsals, from its first start on; a rehearsal's day only goes forward. */
final class Mode {
    private Mode() {}

    /** @throws CannotStart when the folder is of the other kind */
    static void settle(DataFolder folder, Optional<LocalDate> asked) {
        Properties settings = folder.settings();
        boolean rehearsal = asked.isPresent();
        String kind = settings.getProperty("kind", rehearsal ? "rehearsal" : "normal");
        if (rehearsal && kind.equals("normal")) {
            throw new CannotStart("The folder " + folder.root()
                    + " holds real work; a rehearsal needs a folder of its own (--data).");
        }
        if (!rehearsal && kind.equals("rehearsal")) {
            throw new CannotStart(
                    "The folder " + folder.root() + " was made for rehearsals; start it with --rehearsal DAY.");
        }
        folder.remember("format", Integer.toString(DataFolder.FORMAT));
        folder.remember("kind", kind);
        asked.ifPresent(
                day -> folder.remember("rehearsal-day", later(day, settings).toString()));
    }

    private static LocalDate later(LocalDate day, Properties settings) {
        LocalDate reached = LocalDate.parse(settings.getProperty("rehearsal-day", day.toString()));
        return reached.isAfter(day) ? reached : day;
    }
}
