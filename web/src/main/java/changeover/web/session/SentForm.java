package changeover.web.session;

import changeover.contracts.digests.Sha256;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Deque;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import org.jboss.resteasy.reactive.server.core.CurrentRequestManager;
import org.jboss.resteasy.reactive.server.core.multipart.FormData;
import org.jboss.resteasy.reactive.server.multipart.FormValue;

/**
 * The form in hand, if the page it was drawn on gave it an id.
 *
 * @param digest of its address and all that was written in it, files too: one id cannot stand for two deeds
 */
record SentForm(UUID id, byte[] digest) {

    /** The field that carries the id. */
    static final String ONCE = "once";

    /** What says nothing of the deed. */
    private static final Set<String> MARKS = Set.of(ONCE, KeptForm.CSRF, KeptForm.WRITER);

    private static final byte[] END = {0};

    static Optional<SentForm> inHand() {
        var request = CurrentRequestManager.get();
        FormData form = request == null ? null : request.getFormData();
        // A form that was kept while its writer signed in again is drawn with a new id before the one it came with.
        FormValue said = form == null ? null : form.getLast(ONCE);
        if (request == null || form == null || said == null || said.isFileItem()) {
            return Optional.empty();
        }
        return id(said.getValue()).map(id -> new SentForm(id, digest(request.getPath(), form)));
    }

    /** What no page of ours wrote is no id. */
    private static Optional<UUID> id(String text) {
        try {
            return Optional.of(UUID.fromString(text));
        } catch (IllegalArgumentException notOurs) {
            return Optional.empty();
        }
    }

    private static byte[] digest(String path, FormData form) {
        try {
            MessageDigest digest = Sha256.begun();
            add(digest, path);
            var names = new TreeSet<String>();
            form.forEach(names::add);
            names.removeAll(MARKS);
            for (String name : names) {
                Deque<FormValue> values = form.get(name);
                for (FormValue value : values) {
                    add(digest, name);
                    add(digest, value);
                }
            }
            return digest.digest();
        } catch (IOException cause) {
            throw new IllegalStateException("the form's file could not be read", cause);
        }
    }

    private static void add(MessageDigest digest, FormValue value) throws IOException {
        if (!value.isFileItem()) {
            add(digest, value.getValue());
            return;
        }
        add(digest, String.valueOf(value.getFileName()));
        try (InputStream file = value.getFileItem().getInputStream()) {
            digest.update(file.readAllBytes());
        }
        digest.update(END);
    }

    private static void add(MessageDigest digest, String text) {
        digest.update(text.getBytes(StandardCharsets.UTF_8));
        digest.update(END);
    }
}
