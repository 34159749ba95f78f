package changeover.deploy.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A data folder keeps its secrets to its owner, its kind for ever, and itself from older programs. */
class DataFolderTest {

    @TempDir
    private Path root;

    @Test
    void secrets_are_made_once_and_read_by_their_owner_only() throws IOException {
        Path file = root.resolve("secrets.properties");
        String first = new Secrets(file).password("owner");
        assertEquals(first, new Secrets(file).password("owner"));
        assertNotEquals(first, new Secrets(file).password("app"));
        assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
    }

    @Test
    void data_of_a_newer_version_are_left_alone() {
        DataFolder folder = new DataFolder(root);
        folder.remember("format", "2");
        String sentence = assertThrows(CannotStart.class, folder::prepare).getMessage();
        assertTrue(sentence.contains("newer"), sentence);
    }

    @Test
    void real_work_is_never_rehearsed_and_a_rehearsal_is_never_real_work() {
        DataFolder real = new DataFolder(root);
        Mode.settle(real, Optional.empty());
        assertThrows(CannotStart.class, () -> Mode.settle(real, Optional.of(LocalDate.of(2027, 1, 1))));
        DataFolder rehearsal = new DataFolder(root.resolve("rehearsal"));
        assertTrue(rehearsal.root().toFile().mkdir());
        Mode.settle(rehearsal, Optional.of(LocalDate.of(2027, 1, 1)));
        assertThrows(CannotStart.class, () -> Mode.settle(rehearsal, Optional.empty()));
    }

    @Test
    void a_rehearsal_only_goes_forward() {
        DataFolder rehearsal = new DataFolder(root);
        Mode.settle(rehearsal, Optional.of(LocalDate.of(2027, 1, 1)));
        rehearsal.remember("rehearsal-day", "2027-02-01");
        Mode.settle(rehearsal, Optional.of(LocalDate.of(2027, 1, 1)));
        assertEquals("2027-02-01", rehearsal.settings().getProperty("rehearsal-day"));
    }

    @Test
    void two_launchers_never_share_a_folder() {
        DataFolder folder = new DataFolder(root);
        folder.prepare();
        assertTrue(folder.lock().isValid());
    }
}
